package culm.bench.batch;

import java.util.NavigableSet;
import java.util.TreeSet;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.geometry.GeometryException;

/**
 * The half-width the cane has, m(s), as a table over the distance s from the fold: the same for every staple of a batch, because staple and
 * cane only meet at s = tie length - z. Good to {@value #TOLERANCE} mm.
 */
final class CaneTable {
    static final double TOLERANCE = 1e-8;
    private final SmoothTable table;
    private final double from;
    private final double to;

    /** @throws culm.geometry.GeometryException when the cane cannot be computed between those places */
    CaneTable(Blank design, double from) {
        Seam seam = new Seam(design);
        this.from = Math.max(from, seam.parts().width().from());
        this.to = Math.min(design.number(Inputs.FOLDED_LENGTH), seam.parts().width().to());
        if (!(this.from < this.to)) {
            throw new GeometryException(Inputs.TIE_LENGTH, "No staple of this batch reaches the cane at the tie lengths looked at.");
        }
        NavigableSet<Double> marks = new TreeSet<>();
        for (double s : seam.parts().width().breaks()) {
            marks.add(s);
        }
        seam.parts().inside().ifPresent(inside -> {
            for (double s : inside.breaks()) {
                marks.add(s);
            }
        });
        marks.add(this.from);
        marks.add(this.to);
        double[] inside = marks.subSet(this.from, true, this.to, true).stream().mapToDouble(Double::doubleValue).toArray();
        table = new SmoothTable(s -> seam.given(height(seam, s)), inside, TOLERANCE);
    }

    /** The height for a distance from the fold, kept inside the data against the rounding of the subtraction. */
    private double height(Seam seam, double s) {
        double z = seam.tieLength() - s;
        while (seam.tieLength() - z > to) {
            z = Math.nextUp(z);
        }
        while (seam.tieLength() - z < from) {
            z = Math.nextDown(z);
        }
        return z;
    }

    boolean covers(double s) {
        return s >= from - 1e-9 && s <= to + 1e-9;
    }

    double halfWidth(double s) {
        return table.value(s);
    }
}
