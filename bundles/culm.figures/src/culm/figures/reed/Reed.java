package culm.figures.reed;

import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Mark;
import culm.blank.Seam;
import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeSection;
import culm.geometry.section.Section;
import culm.geometry.shape.Edge;

/**
 * A blank prepared for drawing: what lies where at each height. Where the parts do not go together, {@link #problem()} says why and only what is
 * still known is drawn. Immutable but for what it keeps from asking twice; not for several threads at once.
 */
public final class Reed {
    private final Assessment assessment;
    private final Blank blank;
    private final Seam seam;
    private final String problem;
    private final boolean silent;
    private final Laid.Growth growth;
    private Outlines outlines;

    /** What was prepared before, with other numbers. */
    private Reed(Assessment assessment, Reed prepared, boolean silent) {
        this.assessment = assessment;
        this.blank = prepared.blank;
        this.seam = prepared.seam;
        this.problem = prepared.problem;
        this.silent = silent;
        this.growth = prepared.growth;
        this.outlines = prepared.outlines;
    }

    private Reed(Assessment assessment) {
        this.assessment = assessment;
        this.blank = assessment.blank();
        Seam made = null;
        String why = "";
        try {
            made = new Seam(blank);
        } catch (GeometryException e) {
            why = e.told();
        }
        seam = made;
        problem = why;
        silent = false;
        growth = made == null ? new Laid.Growth(1, 1, 1, 0)
                : new Laid.Growth(made.gougeWidthGrowth(), made.shapeGrowth(), made.thicknessGrowth(), blank.number(Inputs.DELTA));
    }

    /** Prepares an assessed blank. */
    public static Reed of(Assessment assessment) {
        return new Reed(assessment);
    }

    /**
     * Computes now what every drawing of it needs, so that drawing takes less time.
     *
     * @return this
     */
    public Reed ready() {
        outlines();
        return this;
    }

    /**
     * The same blank with more numbers told; what was computed for drawing stays.
     *
     * @param fuller another assessment of the same blank
     */
    public Reed told(Assessment fuller) {
        if (fuller.blank() != blank) {
            throw new IllegalArgumentException("an assessment of another blank");
        }
        return new Reed(fuller, this, silent);
    }

    /** {@return the same that does not say why it cannot be drawn, for where that is told beside it} */
    public Reed silent() {
        return new Reed(assessment, this, true);
    }

    /** {@return whether it does not say so} */
    boolean isSilent() {
        return silent;
    }

    /** Its outlines, computed once. */
    Outlines outlines() {
        if (outlines == null) {
            outlines = new Outlines(this);
        }
        return outlines;
    }

    public Assessment assessment() {
        return assessment;
    }

    /** Why the parts cannot be drawn, in one sentence; its lengths stand as {@link culm.geometry.words.Told} writes them. */
    public Optional<String> problem() {
        return silent || problem.isEmpty() ? Optional.empty() : Optional.of(problem);
    }

    /** Whether the parts can be drawn. */
    public boolean drawable() {
        return seam != null;
    }

    /** Height of a mark, if it exists. */
    public OptionalDouble mark(Mark mark) {
        return assessment.heights().of(mark);
    }

    double number(String path) {
        return blank.number(path);
    }

    double stapleTop() {
        return blank.number(Inputs.STAPLE_LENGTH);
    }

    double fold() {
        return blank.number(Inputs.TIE_LENGTH);
    }

    double caneEnd() {
        return fold() - blank.number(Inputs.FOLDED_LENGTH);
    }

    /** Highest point that is drawn, mm. */
    public double top() {
        return Math.max(fold(), Math.max(stapleTop(), mark(Mark.FINISHED).orElse(0)));
    }

    /** Whether cane lies on the staple at a height. */
    boolean caneOnStaple(double z) {
        return z >= caneEnd() && z <= stapleTop() && z <= fold();
    }

    /** The wrap's lower end: as given, else the cork, else the end of the cane. */
    double wrapBottom() {
        return mark(Mark.WRAP_BOTTOM).orElse(caneEnd());
    }

    double wrapTop() {
        return blank.number(Inputs.WRAP_TOP);
    }

    double pitch() {
        return blank.number(Inputs.THREAD_PITCH);
    }

    double thread() {
        return blank.number(Inputs.THREAD_DIAMETER);
    }

    /** Height at which the thread starts: below it lies one layer, above it two. */
    double wrapStart() {
        return Math.max(wrapBottom(), wrapTop() - blank.number(Inputs.START_TURNS) * pitch());
    }

    Section outside(double z) {
        return seam.parts().staple().outside(z);
    }

    Section bore(double z) {
        return seam.parts().staple().bore(z);
    }

    /** Cane laid around the staple, for heights with cane on the staple. */
    Laid laid(double z) {
        return laid(z, Laid.FINE);
    }

    /** How far the laid cane reaches to the side, seen from the wide side. */
    double laidReach(double z) {
        return laid(z, Laid.COARSE).reach(edge(z));
    }

    private Laid laid(double z, int steps) {
        return new Laid(outside(z), seam.parts().gouge(), gouge(z), growth, steps);
    }

    Edge edge(double z) {
        return seam.edge(fold() - z);
    }

    private GougeSection gouge(double z) {
        return seam.parts().gouge().at(fold() - z);
    }

    /** Thickness in the middle of the blade, under the thread or soaked as the blank says. */
    double middle(double z) {
        return growth.thickness() * gouge(z).thickness(0);
    }

    /** Whether the widths were measured at a height. */
    boolean covered(double z) {
        return seam.covers(fold() - z);
    }

    /** The sketch above the staple; only where {@link #covered}. @throws GeometryException where the cane cannot be told */
    Sketch sketch(double z) {
        double top = stapleTop();
        double start = outside(top).halfNarrow() + middle(top) / 2;
        double u = Math.min(1, Math.max(0, (z - top) / Math.max(1e-9, fold() - top)));
        double narrow = (1 - u) * start + u * middle(fold()) / 2;
        double side = growth.thickness() * gouge(z).thickness(edge(z).meeting());
        return Sketch.of(seam.given(z), narrow, middle(z), Math.max(0, side));
    }

    /** How far the sides are open at a height with cane on the staple; empty elsewhere and where it cannot be told. */
    public OptionalDouble open(double z) {
        if (!drawable() || !caneOnStaple(z) || !covered(z)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(seam.open(z));
        } catch (GeometryException e) {
            return OptionalDouble.empty(); // the assessment says why
        }
    }
}
