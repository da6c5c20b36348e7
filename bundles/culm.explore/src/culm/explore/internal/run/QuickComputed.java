package culm.explore.internal.run;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Columns;
import culm.explore.internal.fast.State;
import culm.geometry.GeometryException;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.RolledSheet;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/**
 * "Everything could be computed" on columns: the closing, the thread's way, and the bore, which needs a wall below the outside's smallest radius of
 * curvature. For straight sides b^2/a falls all the way up where 2 |b'| a &gt; |a'| b at both ends, so the smallest radius is the top's; a rolled
 * sheet's is linear; between two measured rows it is at least that of the leanest axes with the widest. Where that does not prove it, the bore is computed.
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
    /** Wide and narrow axes from the bottom to the top, [row][lane]; none for types that are not known here. */
    private final List<double[][]> axes = new ArrayList<>();
    private final boolean measured;
    private final boolean rolled;
    private final Boolean always;

    QuickComputed(int bit, Columns columns, BlockCloser closer) {
        this.bit = bit;
        this.columns = columns;
        states = closer.states();
        wrapTop = columns.of(Inputs.WRAP_TOP);
        top = columns.of(Inputs.STAPLE_LENGTH);
        cork = columns.of(Inputs.CORK_TOP);
        bottom = columns.of(Inputs.WRAP_BOTTOM);
        wall = columns.of(Inputs.WALL);
        Blank base = columns.base();
        StapleType type = base.staple().type();
        rolled = type instanceof RolledSheet;
        measured = type instanceof MeasuredStaple;
        if (base.value(Inputs.CHECK_TURNS).isEmpty() && (rolled || type instanceof StraightSidedOval)) {
            axes.add(new double[][] {columns.of("staple.bottom"), columns.of("staple.bottom")});
            axes.add(new double[][] {columns.of("staple.topWide"), columns.of("staple.topNarrow")});
        } else if (base.value(Inputs.CHECK_TURNS).isEmpty() && measured) {
            for (int i = 0; i < base.staple().values().table("places").rows(); i++) {
                axes.add(new double[][] {columns.of("staple.places[" + i + "].wide"), columns.of("staple.places[" + i + "].narrow")});
            }
        }
        always = columns.varies("staple.") ? null : Boolean.valueOf(computed(base));
    }

    @Override
    public void judge(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            double low = Double.isNaN(bottom[l]) ? cork[l] : bottom[l];
            boolean fine = states[l] != State.REFUSED && low < wrapTop[l] && wrapTop[l] <= top[l];
            if (!fine || !bore(l)) {
                failed[l] |= bit;
            }
        }
    }

    private boolean bore(int l) {
        if (always != null) {
            return always;
        }
        return proven(l) || computed(columns.blank(l));
    }

    private static boolean computed(Blank blank) {
        try {
            return Double.isFinite(blank.parts().staple().boreVolume());
        } catch (GeometryException e) {
            return false;
        }
    }

    /** Whether the wall is proven to fit everywhere. */
    private boolean proven(int l) {
        if (axes.isEmpty()) {
            return false;
        }
        if (!measured) {
            return straight(axes.get(0)[0][l], axes.get(1)[0][l], axes.get(1)[1][l], wall[l]);
        }
        for (int i = 1; i < axes.size(); i++) {
            double leanest = Math.min(lean(i, l), lean(i - 1, l));
            double widest = Math.max(wide(i, l), wide(i - 1, l));
            if (!(leanest * leanest > 2 * wall[l] * widest)) {
                return false;
            }
        }
        return true;
    }

    private double lean(int row, int l) {
        return Math.min(axes.get(row)[0][l], axes.get(row)[1][l]);
    }

    private double wide(int row, int l) {
        return Math.max(axes.get(row)[0][l], axes.get(row)[1][l]);
    }

    private boolean straight(double d, double wide, double narrow, double wall) {
        double a = Math.max(wide, narrow);
        double b = Math.min(wide, narrow);
        double da = d - a;
        double db = d - b;
        boolean least = rolled || db > 0 && da >= 0 && 2 * db * a > da * b && 2 * db > da;
        return least && b * b > 2 * wall * a && d > 2 * wall;
    }
}
