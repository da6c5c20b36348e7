package culm.extensions;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.FrameworkUtil;

import culm.blank.export.Exporter;
import culm.blank.export.Exporters;
import culm.blank.export.GuardedExporter;
import culm.blank.rules.Finding;
import culm.blank.rules.GuardedRule;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.geometry.gouge.GougeType;
import culm.geometry.guard.Budget;
import culm.geometry.guard.Guard;
import culm.geometry.guard.Guarded;
import culm.geometry.guard.GuardedGougeType;
import culm.geometry.guard.GuardedShapeType;
import culm.geometry.guard.GuardedStapleType;
import culm.geometry.guard.Health;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Registry;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;

/**
 * Everything that plug-ins contribute, read once from the extension registry and handed on as plain registries.
 *
 * @param profiles      kinds of staple, gouge and shape
 * @param rules         the rules
 * @param exporters     the exporters
 * @param jars          what is in the folder of plug-ins; empty when there is none
 * @param contributions who contributes what, and what failed, in the order of {@link Point#all()}
 */
public record Extensions(Profiles profiles, Rules rules, Exporters exporters, List<PlugInJar> jars, List<Contribution> contributions) {
    /** Where the extension points belong. */
    public static final String NAMESPACE = "culm.extensions";

    /** The system property that names the folder of plug-ins. */
    public static final String FOLDER = "culm.plugIns";

    private static final Duration LONGEST = Duration.ofSeconds(10);

    /** Installs what is in the folder of plug-ins and reads everything that is contributed then. Called once, at the start of the program. */
    public static Extensions start() {
        BundleContext context = context(FrameworkUtil.getBundle(Extensions.class));
        String folder = context.getProperty(FOLDER);
        List<PlugInJar> jars = folder == null || folder.isBlank() ? List.of() : new PlugInFolder(context).install(Path.of(folder));
        return read(RegistryFactory.getRegistry(), jars, LONGEST);
    }

    /** A bundle has a context from when it was started; this one has nothing to do then. */
    private static BundleContext context(Bundle bundle) {
        try {
            bundle.start(Bundle.START_TRANSIENT);
            return bundle.getBundleContext();
        } catch (BundleException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Reads a registry, as {@code Platform.getExtensionRegistry()}. A plug-in that fails is left out and reported, never thrown on. */
    public static Extensions read(IExtensionRegistry registry) {
        return read(registry, List.of(), LONGEST);
    }

    static Extensions read(IExtensionRegistry registry, List<PlugInJar> jars, Duration longest) {
        List<Contribution> all = new ArrayList<>();
        Registry<StapleType> staples = registry(new PointReader<>(registry, Point.STAPLES, longest, all::add).read(
                (type, plugIn) -> new GuardedStapleType(type, guard(Point.STAPLES, type, plugIn))));
        Registry<GougeType> gouges = registry(new PointReader<>(registry, Point.GOUGES, longest, all::add).read(
                (type, plugIn) -> new GuardedGougeType(type, guard(Point.GOUGES, type, plugIn))));
        Registry<ShapeType> shapes = registry(new PointReader<>(registry, Point.SHAPES, longest, all::add).read(
                (type, plugIn) -> new GuardedShapeType(type, guard(Point.SHAPES, type, plugIn))));
        List<Rule> rules = new PointReader<>(registry, Point.RULES, longest, all::add).read((rule, plugIn) -> new GuardedRule(rule, plugIn.said()));
        List<Exporter> exporters = new PointReader<>(registry, Point.EXPORTERS, longest, all::add).read((made, plugIn) -> new GuardedExporter(made, plugIn.said()));
        return new Extensions(new Profiles(staples, gouges, shapes), new Rules(rules), new Exporters(exporters), jars, List.copyOf(all));
    }

    private static <T extends ProfileType> Registry<T> registry(List<T> types) {
        Registry<T> registry = new Registry<>();
        types.forEach(registry::add);
        return registry;
    }

    private static <T extends ProfileType> Guard guard(Point<T> point, T type, PlugIn plugIn) {
        return Guard.of(point.word(), type.name(), plugIn.said(), Budget.GEOMETRY);
    }

    /** What a contribution has done since the start: calls, time, failures; empty for what ships, which is not watched. */
    public Optional<Health> health(Contribution contribution) {
        Object found = switch (contribution.point().name()) {
            case "stapleTypes" -> profiles.staples().find(contribution.id()).orElse(null);
            case "gougeTypes" -> profiles.gouges().find(contribution.id()).orElse(null);
            case "shapeTypes" -> profiles.shapes().find(contribution.id()).orElse(null);
            case "rules" -> rules.all().stream().filter(r -> r.id().equals(contribution.id())).findFirst().orElse(null);
            default -> exporters.find(contribution.id()).orElse(null);
        };
        return contribution.failure().isEmpty() && found instanceof Guarded guarded ? Optional.of(guarded.guard().health()) : Optional.empty();
    }

    /** What could not be used. */
    public List<Contribution> failed() {
        return contributions.stream().filter(c -> c.failure().isPresent()).toList();
    }

    /** A finding for each plug-in and each contribution that could not be used, naming it. */
    public List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        jars.forEach(jar -> jar.problem().ifPresent(why -> found.add(unused("The plug-in " + jar.file() + " is not in use. " + why))));
        failed().forEach(c -> found.add(unused("The " + c.point().word() + " \"" + c.id() + "\" of the plug-in " + c.plugIn().said() + " is not in use. "
                + c.failure().orElseThrow())));
        return found;
    }

    private static Finding unused(String sentence) {
        return Finding.of("plugIns", Severity.ADVICE, sentence).remedy("Remove the plug-in, or ask whoever made it for a newer one.");
    }
}
