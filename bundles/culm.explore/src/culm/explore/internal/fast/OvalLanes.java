package culm.explore.internal.fast;

import culm.blank.Inputs;

/** Straight-sided ovals: semi-axes linear in z from a round bottom. */
final class OvalLanes extends StapleLanes {
    private final double[] length;
    private final double[] bottom;
    private final TopLanes top;
    private final double[] a = new double[Columns.SIZE];
    private final double[] b = new double[Columns.SIZE];
    private final double[] da = new double[Columns.SIZE];
    private final double[] db = new double[Columns.SIZE];

    OvalLanes(Columns columns, BendRule rule) {
        super(rule);
        length = columns.of(Inputs.STAPLE_LENGTH);
        bottom = columns.of("staple.bottom");
        top = new TopLanes(columns, "staple.topWide", "staple.topNarrow");
    }

    @Override
    void prepare(int n) {
        top.prepare(n);
        slopes(length, bottom, top.a, da, n);
        slopes(length, bottom, top.b, db, n);
    }

    private static void slopes(double[] length, double[] bottom, double[] end, double[] slope, int n) {
        for (int l = 0; l < n; l++) {
            slope[l] = (end[l] - 0.5 * bottom[l]) / length[l];
        }
    }

    @Override
    void quarterAt(double[] z, int n) {
        axis(z, bottom, da, a, n);
        axis(z, bottom, db, b, n);
        EllipseLanes.quarter(a, b, da, db, quarter, slope, n);
    }

    @Override
    void at(double[] z, int n) {
        quarterAt(z, n);
        for (int i = 0; i < rule.nodes; i++) {
            EllipseLanes.curvature(a, b, rule.sin2[i], rule.cos2[i], rho[i], n);
        }
    }

    private static void axis(double[] z, double[] bottom, double[] slope, double[] axis, int n) {
        for (int l = 0; l < n; l++) {
            axis[l] = 0.5 * bottom[l] + z[l] * slope[l];
        }
    }

    @Override
    void bound(double[] z, int which, int n) {
        axis(z, bottom, da, a, n);
        axis(z, bottom, db, b, n);
        falls(a, b, top.a, top.b, da, db, bounds.falls, bounds.oval, n);
        turns(a, b, top.a, top.b, da, db, bounds.shortens, bounds.turns, bounds.quarter, n);
    }

    /**
     * dP/da = integral of a cos^2 / h is at least pi a / max(a, b), since h is at most max(a, b); likewise for b.
     * The ratio of two linear axes is monotone, so its extremes lie at the ends.
     */
    private static void falls(double[] a, double[] b, double[] topA, double[] topB, double[] da, double[] db, double[] falls, double[] oval, int n) {
        for (int l = 0; l < n; l++) {
            double here = a[l] / b[l];
            double there = topA[l] / topB[l];
            double least = Math.min(here, there);
            double most = Math.max(here, there);
            double rises = Math.max(0, Math.max(da[l], db[l]));
            falls[l] = -Math.PI / 4 * (da[l] * Math.min(1, least) + db[l] * Math.min(1, 1 / most)) - 1e3 * rises;
            oval[l] = Math.max(most, 1 / least);
        }
    }

    /**
     * d rho / da = (2 - 3 a^2 sin^2 theta / h^2) rho / a, so |d rho / da| is at most 2 rho / a, and dS/da is never negative and largest where
     * tan tau = sqrt 2 on the eccentric angle tau: at most 2 (0.8165 + 0.4226 b/a). d rho / db = (2 - 3 b^2 cos^2 theta / h^2) rho / b, so dS/db is
     * largest at the seam: dP/db / 4, at most pi/4 max(1, b/a). Both axes fall (else {@link Bounds#falls} refuses), so the perimeter is largest at z and
     * 1/a, 1/b at the top.
     */
    private static void turns(double[] a, double[] b, double[] topA, double[] topB, double[] da, double[] db, double[] shortens, double[] turns,
            double[] quarter, int n) {
        for (int l = 0; l < n; l++) {
            double narrow = Math.max(b[l] / a[l], topB[l] / topA[l]);
            double most = Math.PI / 2 * Math.sqrt(0.5 * (a[l] * a[l] + b[l] * b[l]));
            quarter[l] = most;
            shortens[l] = Math.abs(da[l]) * (1.633 + 0.8453 * narrow) + Math.abs(db[l]) * Math.PI / 4 * Math.max(1, narrow);
            turns[l] = 2 * most * (Math.abs(da[l]) / topA[l] + Math.abs(db[l]) / topB[l]);
        }
    }
}
