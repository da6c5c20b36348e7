package culm.bench.learn;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.bench.log.PlannedSeen;
import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.Inputs;
import culm.design.Bridge;
import culm.model.Design;
import culm.model.FitData;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.Part;
import culm.model.Quantity;
import culm.model.Worked;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/**
 * What was learned as the fit of a design. It stands as a fit to a blank that worked: the design itself, with the turns that the learned length
 * makes of it; the reading error is such that the band becomes that of the next blank.
 */
public final class LearnedFit {
    private static final double COVERAGE = 1.959963984540054;
    private static final int MOST = 60;

    private LearnedFit() {
    }

    /** The fit of a blank; empty when the sides never close with the learned length. @param planned the design's blank, with or without a fit */
    public static Optional<Fit> of(Learned learned, Blank planned) {
        Blank bare = planned.edit().fit(null).clear(Inputs.DELTA).build();
        double delta = short6(learned.delta());
        OptionalDouble turns = PlannedSeen.turns(bare.with(Inputs.DELTA, delta));
        return turns.isEmpty() ? Optional.empty() : Optional.of(new Fit(bare, turns.getAsDouble(), short6(learned.next() * Math.sqrt(3) / COVERAGE), delta, words(learned)));
    }

    /**
     * The same for a design's file, in use. Linked parts are copied into it, so that it does not change when the part does.
     * @param planned the design's blank
     * @param file    the design's file, for its links
     */
    public static Optional<FitData> data(Learned learned, Design design, Blank planned, Path file, Studio studio) throws FileProblemException {
        Optional<Fit> fit = of(learned, planned);
        if (fit.isEmpty()) {
            return Optional.empty();
        }
        FitData data = ModelFactory.eINSTANCE.createFitData();
        data.setInUse(true);
        data.setBlank(words(learned));
        learned.lessons().get(learned.lessons().size() - 1).tied().on().ifPresent(data::setSeenOn);
        data.setDelta(quantity(fit.get().delta(), short6(learned.half())));
        data.setTurnsLeft(quantity(fit.get().turnsLeft(), fit.get().readingError()));
        data.setNotes(Learned.CANNOT_SEPARATE);
        data.setWorked(worked(design, file, studio));
        return Optional.of(data);
    }

    private static String words(Learned learned) {
        return Bridge.LEARNED + learned.lessons().size() + " blanks: " + learned.group().text();
    }

    private static Worked worked(Design design, Path file, Studio studio) throws FileProblemException {
        String shown = studio.shown(file);
        Worked worked = ModelFactory.eINSTANCE.createWorked();
        worked.setInstrument(design.getInstrument());
        worked.setStaple(own(design.getStaple(), file, shown, studio));
        worked.setGouge(own(design.getGouge(), file, shown, studio));
        worked.setShape(own(design.getShape(), file, shown, studio));
        worked.setThread(own(design.getThread(), file, shown, studio));
        worked.setTie(EcoreUtil.copy(design.getTie()));
        worked.setCane(design.getCane() == null ? null : EcoreUtil.copy(design.getCane()));
        return worked;
    }

    private static <P extends Part> P own(P part, Path file, String shown, Studio studio) throws FileProblemException {
        if (part == null) {
            return null;
        }
        P copy = EcoreUtil.copy(studio.resolve(file, shown, part).part());
        String id = copy.getId();
        copy.setId(id == null ? null : ("worked-" + id).substring(0, Math.min(MOST, id.length() + 7)));
        return copy;
    }

    /** Six decimals: a file needs no more. */
    private static double short6(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    private static Quantity quantity(double value, double tolerance) {
        Quantity quantity = ModelFactory.eINSTANCE.createQuantity();
        quantity.setValue(value);
        quantity.setTolerance(tolerance);
        quantity.setHow(How.MEASURED);
        return quantity;
    }
}
