package culm.explore.internal.fast;

import java.util.Arrays;

/**
 * Lays blades around sections, a block at a time: the integral J of the thickness over theta, from which the half-width needed is
 * M = P/4 + q J / 2. The cane's angle phi obeys d phi / d theta = (rho + q t(phi) / 2) / (g (R - t(phi) / 2)); t hardly changes, so
 * rounds over the nodes, each with the newest values of the others, shrink the error by 0.01 to 0.05 each.
 * <p>With v = 1 - cos phi and w = k^2 sin^2 phi = k^2 v (2 - v): t = t0 + e v + r (1 - sqrt(1 - w)). 1 - cos by its Taylor series to phi^16, error below
 * 5e-15 up to {@value #WIDEST} rad; 1 - sqrt(1 - w) by its series to w^8, below 3e-10 at w = 0.13, 1e-15 for the trade's gouges (w below 0.01);
 * 1 / (1 - x), x = (t - t0) / (2 R - t0), as (1 + x)(1 + x^2)(1 + x^4), relative error x^8.
 */
final class BendLanes {
    /** Largest angle phi for which the stated error of the cosine holds. */
    static final double WIDEST = 1.2;
    /** Largest move of J in the last round that counts as settled; what is left is a twentieth of it or less. */
    static final double MOVED = 1e-6;

    /** J, mm rad, of the last round, and how far it moved in that round. */
    final double[] integral = new double[Columns.SIZE];
    final double[] moved = new double[Columns.SIZE];
    private final BendRule rule;
    private final GougeLanes gouge;
    private final double[] width;
    private final double[] thickness;
    private final double[][] speed;
    private final double[] phi = new double[Columns.SIZE];
    private final double[] more = new double[Columns.SIZE];
    /** t0, q / 2, 1 / (g (R - t0 / 2)), 1 / (2 R - t0) */
    private final double[] middle = new double[Columns.SIZE];
    private final double[] halfGrowth = new double[Columns.SIZE];
    private final double[] slow = new double[Columns.SIZE];
    private final double[] per = new double[Columns.SIZE];

    /** @param width growth g of width; @param thickness growth q of thickness; filled before each block */
    BendLanes(BendRule rule, GougeLanes gouge, double[] width, double[] thickness) {
        this.rule = rule;
        this.gouge = gouge;
        this.width = width;
        this.thickness = thickness;
        speed = new double[rule.nodes][Columns.SIZE];
    }

    /** Starts a block from the angles of a usual blade. @param speeds d phi / d theta there, at the nodes */
    void start(double[] speeds, int n) {
        constants(gouge.bark, gouge.circle, gouge.offset, width, thickness, middle, halfGrowth, slow, per, n);
        for (int i = 0; i < rule.nodes; i++) {
            Arrays.fill(speed[i], 0, n, speeds[i]);
        }
    }

    private static void constants(double[] bark, double[] circle, double[] offset, double[] width, double[] thickness, double[] middle, double[] halfGrowth,
            double[] slow, double[] per, int n) {
        for (int l = 0; l < n; l++) {
            double t0 = bark[l] - offset[l] - circle[l];
            double once = 1 / (2 * bark[l] - t0);
            middle[l] = t0;
            halfGrowth[l] = 0.5 * thickness[l];
            slow[l] = 2 * once / width[l];
            per[l] = once;
        }
    }

    /** Rounds from where the last call ended (or {@link #start}); leaves {@link #integral} and {@link #moved}. */
    void bend(double[][] rho, int rounds, int n) {
        for (int round = 0; round < rounds; round++) {
            System.arraycopy(integral, 0, moved, 0, n);
            scaled(Math.PI / 2, middle, integral, n);
            for (int i = 0; i < rule.nodes; i++) {
                angle(rule.stage[i], n);
                versine(phi, phi, n);
                more(phi, gouge.circle, gouge.offset, gouge.square, more, n);
                turn(more, rho[i], middle, halfGrowth, slow, per, speed[i], n);
                add(rule.weight[i], more, integral, n);
            }
        }
        for (int l = 0; l < n; l++) {
            moved[l] = integral[l] - moved[l];
        }
    }

    /** Whether J of every lane that has one moved less than {@link #MOVED} in the last round. */
    boolean settled(int n) {
        int moving = 0;
        for (int l = 0; l < n; l++) {
            moving += Math.abs(moved[l]) >= MOVED ? 1 : 0;
        }
        return moving == 0;
    }

    /** d phi / d theta at a node in one lane, for the start of another block. */
    double speed(int node, int lane) {
        return speed[node][lane];
    }

    private void angle(double[] stage, int n) {
        if (rule.nodes == 8) {
            sum(stage, speed[0], speed[1], speed[2], speed[3], speed[4], speed[5], speed[6], speed[7], phi, n);
            return;
        }
        Arrays.fill(phi, 0, n, 0);
        for (int j = 0; j < rule.nodes; j++) {
            add(stage[j], speed[j], phi, n);
        }
    }

    private static void scaled(double w, double[] from, double[] to, int n) {
        for (int l = 0; l < n; l++) {
            to[l] = w * from[l];
        }
    }

    private static void add(double w, double[] from, double[] to, int n) {
        for (int l = 0; l < n; l++) {
            to[l] = Math.fma(w, from[l], to[l]);
        }
    }

    /** The same for the usual number of nodes, in one pass. */
    private static void sum(double[] w, double[] s0, double[] s1, double[] s2, double[] s3, double[] s4, double[] s5, double[] s6, double[] s7, double[] to,
            int n) {
        double w0 = w[0];
        double w1 = w[1];
        double w2 = w[2];
        double w3 = w[3];
        double w4 = w[4];
        double w5 = w[5];
        double w6 = w[6];
        double w7 = w[7];
        for (int l = 0; l < n; l++) {
            double low = Math.fma(w3, s3[l], Math.fma(w2, s2[l], Math.fma(w1, s1[l], w0 * s0[l])));
            double high = Math.fma(w7, s7[l], Math.fma(w6, s6[l], Math.fma(w5, s5[l], w4 * s4[l])));
            to[l] = low + high;
        }
    }

    /** v = 1 - cos phi. */
    private static void versine(double[] phi, double[] v, int n) {
        for (int l = 0; l < n; l++) {
            double p = phi[l] * phi[l];
            double far = Math.fma(p, Math.fma(p, Math.fma(p, -1 / 20922789888000.0, 1 / 87178291200.0), -1 / 479001600.0), 1 / 3628800.0);
            v[l] = p * Math.fma(p, Math.fma(p, Math.fma(p, Math.fma(p, far, -1 / 40320.0), 1 / 720.0), -1 / 24.0), 0.5);
        }
    }

    /** t - t0 = e v + r (1 - sqrt(1 - w)). */
    private static void more(double[] v, double[] circle, double[] offset, double[] square, double[] more, int n) {
        for (int l = 0; l < n; l++) {
            double w = square[l] * v[l] * (2 - v[l]);
            double high = Math.fma(w, Math.fma(w, Math.fma(w, 429 / 32768.0, 33 / 2048.0), 21 / 1024.0), 7 / 256.0);
            double root = w * Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, high, 5 / 128.0), 1 / 16.0), 1 / 8.0), 0.5);
            more[l] = Math.fma(offset[l], v[l], circle[l] * root);
        }
    }

    private static void turn(double[] more, double[] rho, double[] middle, double[] halfGrowth, double[] slow, double[] per, double[] speed, int n) {
        for (int l = 0; l < n; l++) {
            double x = more[l] * per[l];
            double x2 = x * x;
            double rest = (1 + x) * (1 + x2) * Math.fma(x2, x2, 1);
            speed[l] = Math.fma(halfGrowth[l], middle[l] + more[l], rho[l]) * slow[l] * rest;
        }
    }
}
