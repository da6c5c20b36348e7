package culm.extensions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

import org.eclipse.core.runtime.IExtensionRegistry;

import culm.blank.export.Exporter;
import culm.blank.export.Exporters;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.geometry.gouge.GougeType;
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
 * @param contributions who contributes what, and what failed, in the order of {@link Point#all()}
 */
public record Extensions(Profiles profiles, Rules rules, Exporters exporters, List<Contribution> contributions) {
    /** Where the extension points belong. */
    public static final String NAMESPACE = "culm.extensions";

    /** Reads a registry, as {@code Platform.getExtensionRegistry()}. A plug-in that fails is left out and reported, never thrown on. */
    public static Extensions read(IExtensionRegistry registry) {
        List<Contribution> all = new ArrayList<>();
        Registry<StapleType> staples = registry(registry, Point.STAPLES, all);
        Registry<GougeType> gouges = registry(registry, Point.GOUGES, all);
        Registry<ShapeType> shapes = registry(registry, Point.SHAPES, all);
        List<Rule> rules = new PointReader<>(registry, Point.RULES, all::add).read(same());
        List<Exporter> exporters = new PointReader<>(registry, Point.EXPORTERS, all::add).read(same());
        return new Extensions(new Profiles(staples, gouges, shapes), new Rules(rules), new Exporters(exporters), List.copyOf(all));
    }

    private static <T extends ProfileType> Registry<T> registry(IExtensionRegistry from, Point<T> point, List<Contribution> all) {
        Registry<T> registry = new Registry<>();
        new PointReader<>(from, point, all::add).read(same()).forEach(registry::add);
        return registry;
    }

    private static <T> BiFunction<T, PlugIn, T> same() {
        return (made, plugIn) -> made;
    }

    /** What could not be used. */
    public List<Contribution> failed() {
        return contributions.stream().filter(c -> c.failure().isPresent()).toList();
    }

    /** A finding for each contribution that could not be used, naming its plug-in. */
    public List<Finding> findings() {
        return failed().stream().map(c -> Finding.of("plugIns", Severity.WARNING, "The " + c.point().word() + " \"" + c.id() + "\" of the plug-in "
                + c.plugIn().said() + " is not in use. " + c.failure().orElseThrow()).remedy("Remove the plug-in, or ask whoever made it for a newer one.")).toList();
    }
}
