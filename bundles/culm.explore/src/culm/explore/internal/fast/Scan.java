package culm.explore.internal.fast;

import java.util.Arrays;

import culm.blank.Inputs;

/**
 * Closes one lane that was not proven: looks at G at 256 heights of the overlap at once and finds the change of sign below the closed stretch that reaches
 * the top. Samples lie 0.05 mm apart on a usual overlap; two changes of sign between neighbours need a turn that near to zero, so where G turns nearer than
 * {@value #TURN} mm to zero, where a sample is nearly zero, or where a number does not exist, it gives up, for the reference path.
 */
final class Scan {
    private static final double NEAR = 1e-7;
    private static final double TURN = 1e-3;
    private static final double LONGEST = 20;
    private static final int STEPS = 40;
    private static final int ROUNDS = 6;
    private final Columns columns;
    private final Columns probe;
    private final SeamLanes seam;
    private final Plan plan;
    private final double[] z = new double[Columns.SIZE];
    private final double[] turning = new double[Columns.SIZE];
    private double at;

    Scan(Columns columns, Plan plan) {
        this.columns = columns;
        this.plan = plan;
        probe = columns.empty();
        seam = new SeamLanes(probe, plan.rule());
        Arrays.fill(turning, plan.turning());
    }

    /** Where the last lane closes; NaN where it never does. */
    double at() {
        return at;
    }

    /** @param end end of the cane, mm; the lane's numbers are sound, but for how G runs. @return the lane's state, {@link State#UNSURE} when given up */
    byte close(int lane, double end) {
        double top = columns.of(Inputs.STAPLE_LENGTH)[lane];
        int n = Columns.SIZE;
        if (top - end > LONGEST) {
            return State.UNSURE;
        }
        probe.fill(columns, lane);
        for (int i = 0; i < n; i++) {
            z[i] = i == n - 1 ? top : end + (top - end) * i / (n - 1);
        }
        seam.prepare(plan.speeds(), n);
        lay(n);
        for (int i = 0; i < n; i++) {
            if (!exists(i) || Math.abs(seam.open[i]) < NEAR || turns(i, n)) {
                return State.UNSURE;
            }
        }
        return told(n);
    }

    private void lay(int n) {
        seam.bend(z, ROUNDS, n);
        seam.meet(z, seam.bend.integral, turning, n);
    }

    private boolean exists(int i) {
        return Double.isFinite(seam.open[i]) && Math.abs(seam.bend.moved[i]) < BendLanes.MOVED && Proof.edge(seam.edge, i);
    }

    private boolean turns(int i, int n) {
        double[] open = seam.open;
        return i > 0 && i + 1 < n && Math.abs(open[i]) < TURN && (open[i] - open[i - 1]) * (open[i + 1] - open[i]) <= 0;
    }

    private byte told(int n) {
        int last = n - 1;
        int changes = 0;
        int highest = 0;
        for (int i = 1; i < n; i++) {
            if (seam.open[i] < 0 != seam.open[i - 1] < 0) {
                changes++;
                highest = i;
            }
        }
        at = Double.NaN;
        if (seam.open[last] > 0) {
            return changes == 0 ? State.NEVER : State.ONLY_BELOW;
        }
        if (changes == 0) {
            at = z[0];
            return State.EVERYWHERE;
        }
        at = root(z[highest - 1], z[highest], seam.open[highest - 1], seam.open[highest]);
        return Double.isNaN(at) ? State.UNSURE : changes == 1 ? State.CLOSES : State.AGAIN;
    }

    /** Regula falsi with the Illinois factor (M. Dowell, P. Jarratt, BIT 11 (1971) 168-174), until G is as small as before a last step elsewhere. */
    private double root(double low, double high, double openLow, double openHigh) {
        double a = low;
        double b = high;
        double fa = openLow;
        double fb = openHigh;
        int side = 0;
        for (int step = 0; step < STEPS; step++) {
            z[0] = (a * fb - b * fa) / (fb - fa);
            lay(1);
            double f = seam.open[0];
            if (Math.abs(f) < NEAR / 10) {
                return z[0];
            }
            if (f < 0) {
                fa = side < 0 ? fa / 2 : fa;
                b = z[0];
                fb = f;
            } else {
                fb = side > 0 ? fb / 2 : fb;
                a = z[0];
                fa = f;
            }
            side = f < 0 ? -1 : 1;
        }
        return Double.NaN;
    }
}
