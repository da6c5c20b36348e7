package culm.explore.internal.fast;

import culm.blank.Inputs;

/** Rolled sheet: the support function, and with it the radius of curvature, is linear in z from the bottom's circle to the top's ellipse. */
final class RolledLanes extends StapleLanes {
    private final double[] length;
    private final double[] bottom;
    private final TopLanes top;
    private final double[][] topRho;

    RolledLanes(Columns columns, BendRule rule) {
        super(rule);
        length = columns.of(Inputs.STAPLE_LENGTH);
        bottom = columns.of("staple.bottom");
        top = new TopLanes(columns, "staple.topWide", "staple.topNarrow");
        topRho = new double[rule.nodes][Columns.SIZE];
    }

    @Override
    void prepare(int n) {
        top.prepare(n);
        for (int i = 0; i < rule.nodes; i++) {
            EllipseLanes.curvature(top.a, top.b, rule.sin2[i], rule.cos2[i], topRho[i], n);
        }
    }

    @Override
    void at(double[] z, int n) {
        for (int i = 0; i < rule.nodes; i++) {
            blend(z, length, bottom, 0.5, topRho[i], rho[i], n);
        }
        quarterAt(z, n);
    }

    @Override
    void quarterAt(double[] z, int n) {
        blend(z, length, bottom, Math.PI / 4, top.quarter, quarter, n);
        for (int l = 0; l < n; l++) {
            slope[l] = (top.quarter[l] - Math.PI / 4 * bottom[l]) / length[l];
        }
    }

    private static void blend(double[] z, double[] length, double[] bottom, double share, double[] end, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            double u = z[l] / length[l];
            out[l] = (1 - u) * share * bottom[l] + u * end[l];
        }
    }

    /**
     * The perimeter is linear in z and d rho / dz = (rho top - r) / length. Where the top is wider than high, its radius of curvature falls with theta, so
     * its length to theta is at least theta's share of a quarter, and -dS/dz is largest at the seam.
     */
    @Override
    void bound(double[] z, int which, int n) {
        quarterAt(z, n);
        for (int l = 0; l < n; l++) {
            double round = Math.PI / 4 * bottom[l];
            bounds.falls[l] = -slope[l];
            bounds.turns[l] = (top.quarter[l] + round) / length[l];
            bounds.shortens[l] = top.a[l] >= top.b[l] ? Math.max(0, -slope[l]) : bounds.turns[l];
            bounds.quarter[l] = Math.max(quarter[l], top.quarter[l]);
            bounds.oval[l] = Math.max(top.a[l] / top.b[l], top.b[l] / top.a[l]);
        }
    }
}
