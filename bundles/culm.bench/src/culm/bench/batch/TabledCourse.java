package culm.bench.batch;

import java.util.NavigableSet;
import java.util.TreeSet;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.geometry.numeric.Roots;

/**
 * Many tie lengths on one staple, quickly: the half-width needed, M(z), is tabled once for the top of the staple, the cane's half-width once
 * for the batch; then the sides are open by G = 2 (M(z) - m(tie - z)), looked at from the top down. Holds for a gouge that is the same all
 * along, where M does not depend on the tie length.
 */
final class TabledCourse implements TieCourse {
    private static final double STEP = 0.1;
    private final CaneTable cane;
    private final SmoothTable needed;
    private final double top;
    private final double lowest;
    private final double folded;
    private final double crooked;

    /** @param lowest height below which no closing has to be told apart, mm */
    TabledCourse(Blank blank, CaneTable cane, double lowest) {
        this.cane = cane;
        this.top = blank.number(Inputs.STAPLE_LENGTH);
        this.lowest = Math.min(Math.max(0, lowest), top - STEP);
        this.folded = blank.number(Inputs.FOLDED_LENGTH);
        this.crooked = Math.abs(blank.number(Inputs.CROOKED));
        Seam seam = new Seam(blank);
        NavigableSet<Double> marks = new TreeSet<>(java.util.List.of(this.lowest, top));
        for (double z : seam.parts().staple().shape().breaks()) {
            if (z > this.lowest && z < top) {
                marks.add(z);
            }
        }
        needed = new SmoothTable(seam::needed, marks.stream().mapToDouble(Double::doubleValue).toArray(), CaneTable.TOLERANCE);
    }

    @Override
    public double closes(double tie) {
        double end = Math.max(lowest, tie - folded);
        if (!(end < top && top < tie && cane.covers(tie - top) && cane.covers(tie - end))) {
            return Double.NaN;
        }
        if (open(tie, top) > 0) {
            return Double.NaN;
        }
        double above = top;
        while (above > end) {
            double z = Math.max(end, above - STEP);
            if (open(tie, z) > 0) {
                double high = above;
                return Roots.between(h -> open(tie, h), z, high);
            }
            above = z;
        }
        return tie - folded >= lowest ? tie - folded : Double.NEGATIVE_INFINITY;
    }

    @Override
    public double openAtTop(double tie) {
        return cane.covers(tie - top) ? open(tie, top) : Double.NaN;
    }

    private double open(double tie, double z) {
        return 2 * (needed.value(z) - cane.halfWidth(tie - z)) + crooked;
    }
}
