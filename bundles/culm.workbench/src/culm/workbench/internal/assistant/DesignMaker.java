package culm.workbench.internal.assistant;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Registry;
import culm.model.Design;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.text.Ids;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.form.FormPlan;

/** Makes new designs: from one that is there, from parts, or from what a caliper and a mandrel tell. */
public final class DesignMaker {
    /** Above the staple's top a tie is usually so much longer, mm; common practice, no source. */
    private static final double TIE_ABOVE = 25;
    private static final double WRAP_BELOW = 0.5;
    /** How far below the fold a reed is taken to be finished, mm. */
    static final double FINISHED_BELOW = 2;
    private static final double FIELD = 1e3;
    private final Workshop workshop;
    private final Studio studio;

    /**
     * Makes designs for a studio.
     *
     * @param workshop what the window works with
     * @param studio the studio
     */
    public DesignMaker(Workshop workshop, Studio studio) {
        this.workshop = workshop;
        this.studio = studio;
    }

    /** A design like one that is there, with its fit if it has one. */
    Design like(StudioEntry other, String name) throws FileProblemException {
        Design design = workshop.files().load(other.file(), other.shown(), Design.class).document();
        named(design, name);
        return design;
    }

    /** A design of linked parts; the lengths are assumed from the staple's. */
    Design ofParts(String name, Path file, Map<String, Link> links) throws FileProblemException {
        Design design = named(ModelFactory.eINSTANCE.createDesign(), name);
        Edits edits = Edits.of(design, PartResolver.in(studio, file, studio.shown(file)), new SecureRandom());
        links.forEach((part, link) -> edits.link(part, link).execute());
        double staple = workshop.bridge().draft(design, file, name, studio).blank().number(Inputs.STAPLE_LENGTH);
        lengths(edits, staple);
        return design;
    }

    private static void lengths(Edits edits, double staple) throws FileProblemException {
        double tie = staple + TIE_ABOVE;
        assumed(edits, Inputs.TIE_LENGTH, tie);
        assumed(edits, Inputs.WRAP_TOP, staple - WRAP_BELOW);
        assumed(edits, Inputs.FINISHED, tie - FINISHED_BELOW);
    }

    private static void assumed(Edits edits, String path, double value) throws FileProblemException {
        edits.setQuantity(path, OptionalDouble.of(Math.rint(value * FIELD) / FIELD), OptionalDouble.empty(), How.ASSUMED).execute();
    }

    /** A design of measured numbers; what was not measured is assumed. @param measured by path */
    Design measured(String name, Map<String, Double> measured) throws FileProblemException {
        Design design = named(ModelFactory.eINSTANCE.createDesign(), name);
        Edits edits = Edits.of(design, part -> part, new SecureRandom());
        Blank start = start(workshop.bridge().profiles());
        edits.setProfile("staple", start.staple().type()).execute();
        edits.setProfile("gouge", start.gouge().type()).execute();
        edits.setProfile("shape", start.shape().type()).execute();
        double staple = measured.getOrDefault(Inputs.STAPLE_LENGTH, Inputs.all().get(Inputs.STAPLE_LENGTH).standard());
        lengths(edits, staple);
        for (FormPlan.Number asked : asked(workshop.bridge().profiles())) {
            Double value = measured.get(asked.path());
            if (value != null) {
                edits.setQuantity(asked.path(), OptionalDouble.of(value), OptionalDouble.empty(), How.MEASURED).execute();
            } else if (!asked.parameter().optional() && !asked.path().startsWith("tie.")) {
                assumed(edits, asked.path(), asked.parameter().standard());
            }
        }
        design.getStaple().setId("staple");
        design.getGouge().setId("gouge");
        design.getShape().setId("shape");
        return design;
    }

    /** What is asked of someone with a caliper and a mandrel, in the order of the bench. */
    static List<FormPlan.Number> asked(Profiles profiles) {
        return FormPlan.of(start(profiles)).sections().stream().flatMap(s -> s.first().stream())
                .filter(FormPlan.Number.class::isInstance).map(FormPlan.Number.class::cast).toList();
    }

    /** Types that a few numbers describe: those without a table, the usual one of each kind. */
    private static Blank start(Profiles profiles) {
        return new BlankBuilder(Profile.standard(usual(profiles.staples(), "culm.staple.oval")), Profile.standard(usual(profiles.gouges(), "culm.gouge.middleAndSide")),
                Profile.standard(usual(profiles.shapes(), "culm.shape.waisted"))).build();
    }

    private static <T extends ProfileType> T usual(Registry<T> registry, String id) {
        return registry.find(id).orElseGet(() -> registry.all().stream().filter(t -> t.tables().isEmpty()).findFirst().orElseThrow());
    }

    private static Design named(Design design, String name) {
        design.setName(name);
        design.setId(Ids.of(name, "design", List.of()));
        return design;
    }
}
