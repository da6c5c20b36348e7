package culm.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Roots;

/** The tie lengths at which the sides close with the turns wanted. */
public final class TieForTurns {
    private static final double STEP = 0.25;
    private static final double SAME = 1e-6;

    private TieForTurns() {
    }

    /**
     * All tie lengths between two that leave these turns, ascending; none when the parts do not allow it. The seam at the height wanted is followed in
     * steps of {@value #STEP} mm of tie, each change of sign is bracketed to {@link Roots#TOLERANCE}, and only those are told whose closing, found anew,
     * is there: sides that close there but open again above are left out. The worse side of a crooked blank counts.
     *
     * @param turns turns left, may be negative
     * @param from  shortest tie that is tried, mm
     * @param to    longest one, mm
     */
    public static List<Double> find(Blank blank, double turns, double from, double to) {
        double height = blank.number(Inputs.WRAP_TOP) - turns * blank.number(Inputs.THREAD_PITCH);
        double top = blank.number(Inputs.STAPLE_LENGTH);
        List<Double> found = new ArrayList<>();
        if (!(height >= 0 && height <= top)) {
            return found;
        }
        DoubleUnaryOperator open;
        try {
            open = new Seam(blank).openByTie(height);
        } catch (GeometryException refused) {
            return found;
        }
        double aside = Math.abs(blank.number(Inputs.CROOKED));
        double folded = blank.number(Inputs.FOLDED_LENGTH);
        double low = Math.max(from, top);
        double high = Math.min(to, height + folded);
        int steps = (int) Math.ceil((high - low) / STEP);
        double before = Double.NaN;
        for (int i = 0; i <= steps; i++) {
            double tie = i == steps ? high : low + i * STEP;
            double here = told(open, tie) + aside;
            if (before * here <= 0 && before != 0) {
                add(found, blank, height, Roots.between(t -> open.applyAsDouble(t) + aside, low + (i - 1) * STEP, tie));
            }
            before = here;
        }
        if (high == height + folded) {
            add(found, blank, height, high);
        }
        return found;
    }

    private static double told(DoubleUnaryOperator open, double tie) {
        try {
            return open.applyAsDouble(tie);
        } catch (IllegalArgumentException outside) {
            return Double.NaN;
        }
    }

    private static void add(List<Double> found, Blank blank, double height, double tie) {
        Closing closing = ClosingFinder.find(blank.with(Inputs.TIE_LENGTH, tie), Math.abs(blank.number(Inputs.CROOKED)));
        boolean there = closing.at().isPresent() && Math.abs(closing.at().getAsDouble() - height) < SAME;
        if (there && (found.isEmpty() || tie - found.get(found.size() - 1) > SAME)) {
            found.add(tie);
        }
    }
}
