package culm.explore.internal.run;

import culm.blank.Assessor;
import culm.blank.Inputs;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Columns;
import culm.explore.internal.fast.State;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;
import culm.geometry.staple.RolledSheet;

/**
 * "Everything could be computed" on columns: the closing, the thread's way, and the bore, which needs a wall below the outside's smallest radius of
 * curvature. For straight sides b^2/a falls all the way up where 2 |b'| a &gt; |a'| b at both ends, so the smallest radius is the top's; a rolled
 * sheet's is linear. Other lanes are assessed.
 */
final class QuickComputed implements QuickRule {
    private final int bit;
    private final Columns columns;
    private final byte[] states;
    private final double[] wrapTop;
    private final double[] top;
    private final double[] cork;
    private final double[] bottom;
    private final double[] wall;
    private final double[] round;
    private final double[] wide;
    private final double[] narrow;
    private final boolean rolled;

    QuickComputed(int bit, Columns columns, BlockCloser closer) {
        this.bit = bit;
        this.columns = columns;
        states = closer.states();
        wrapTop = columns.of(Inputs.WRAP_TOP);
        top = columns.of(Inputs.STAPLE_LENGTH);
        cork = columns.of(Inputs.CORK_TOP);
        bottom = columns.of(Inputs.WRAP_BOTTOM);
        wall = columns.of(Inputs.WALL);
        StapleType type = columns.base().staple().type();
        rolled = type instanceof RolledSheet;
        boolean known = (rolled || type instanceof StraightSidedOval) && columns.base().value(Inputs.CHECK_TURNS).isEmpty();
        round = known ? columns.of("staple.bottom") : null;
        wide = known ? columns.of("staple.topWide") : null;
        narrow = known ? columns.of("staple.topNarrow") : null;
    }

    @Override
    public void judge(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            double low = Double.isNaN(bottom[l]) ? cork[l] : bottom[l];
            boolean fine = states[l] != State.REFUSED && low < wrapTop[l] && wrapTop[l] <= top[l];
            if (!fine || !bore(l) && !Assessor.assess(columns.blank(l)).troubles().isEmpty()) {
                failed[l] |= bit;
            }
        }
    }

    /** Whether the wall is proven to fit everywhere. */
    private boolean bore(int l) {
        if (round == null) {
            return false;
        }
        double d = round[l];
        double a = Math.max(wide[l], narrow[l]);
        double b = Math.min(wide[l], narrow[l]);
        double da = d - a;
        double db = d - b;
        boolean least = rolled || db > 0 && da >= 0 && 2 * db * a > da * b && 2 * db > da;
        return least && b * b > 2 * wall[l] * a && d > 2 * wall[l];
    }
}
