package culm.blank;

import culm.geometry.gouge.GougeSection;
import culm.geometry.numeric.Gauss;
import culm.geometry.numeric.Roots;
import culm.geometry.section.Section;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Lays a blade around a section: theta turns from the blade's middle (the end of the narrow axis) to the seam, phi is the cane's own
 * angle that comes to lie there. From geometry: d mu / d theta = rho(theta) + q t / 2 with mu = g (R phi - T/2), hence
 * d phi / d theta = (rho + q t(phi) / 2) / (g (R - t(phi) / 2)); g and q are the growth of width and thickness.
 * <p>Solved by Gauss collocation of {@value Gauss#NODES} stages on panels that are halved until two levels agree to 1e-13, broken where
 * the gouge has a row. Error of phi below 1e-12 for analytic pieces.
 */
final class CaneBend {
    private static final int N = Gauss.NODES;
    private static final double AGREE = 1e-13;
    private static final double AT_BREAK = 1e-10;
    private static final int DEEPEST = 30;
    private static final int ROUNDS = 60;
    private static final double[][] A = stages();

    private final Section section;
    private final GougeSection gouge;
    private final double radius;
    private final double width;
    private final double thickness;
    private final double[] breaks;

    /** @param width growth g of width; @param thickness growth q of thickness */
    CaneBend(Section section, GougeSection gouge, double radius, double width, double thickness) {
        this.section = section;
        this.gouge = gouge;
        this.radius = radius;
        this.width = width;
        this.thickness = thickness;
        this.breaks = gouge.breaks();
    }

    /** The cane's angle phi at the seam, theta = pi/2. */
    double seam() {
        return advance(0, Math.PI / 2, 0, DEEPEST);
    }

    private double advance(double from, double to, double phi, int depth) {
        double whole = panel(from, to, phi);
        for (double cut : breaks) {
            if (cut > phi + AT_BREAK && cut < whole - AT_BREAK) {
                double at = Roots.between(theta -> panel(from, theta, phi) - cut, from, to);
                return advance(at, to, advance(from, at, phi, depth), depth);
            }
        }
        double mid = 0.5 * (from + to);
        double half = panel(mid, to, panel(from, mid, phi));
        if (depth == 0 || !(Math.abs(half - whole) > AGREE * Math.max(1, Math.abs(half)))) {
            return half;
        }
        return advance(mid, to, advance(from, mid, phi, depth - 1), depth - 1);
    }

    private double panel(double from, double to, double start) {
        double h = to - from;
        double[] rho = new double[N];
        double[] phi = new double[N];
        double[] slope = new double[N];
        for (int i = 0; i < N; i++) {
            rho[i] = section.curvatureRadius(Math.PI / 2 - from - h * Gauss.node(i));
            phi[i] = start;
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < N; i++) {
                double t = gouge.thickness(phi[i]);
                slope[i] = (rho[i] + 0.5 * thickness * t) / (width * (radius - 0.5 * t));
            }
            double moved = 0;
            for (int i = 0; i < N; i++) {
                double next = 0;
                for (int j = 0; j < N; j++) {
                    next += A[i][j] * slope[j];
                }
                next = start + h * next;
                moved = Math.max(moved, Math.abs(next - phi[i]));
                phi[i] = next;
            }
            if (moved < 1e-15 * Math.max(1, Math.abs(phi[N - 1]))) {
                break;
            }
        }
        double end = 0;
        for (int i = 0; i < N; i++) {
            end += Gauss.weight(i) * slope[i];
        }
        return start + h * end;
    }

    /** Integrals of the Lagrange polynomials of the nodes from 0 to each node. */
    private static double[][] stages() {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(N, 0, 1);
        double[][] a = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                for (int k = 0; k < N; k++) {
                    a[i][j] += Gauss.node(i) * rule.getWeight(k) * lagrange(j, Gauss.node(i) * rule.getPoint(k));
                }
            }
        }
        return a;
    }

    private static double lagrange(int j, double at) {
        double product = 1;
        for (int m = 0; m < N; m++) {
            if (m != j) {
                product *= (at - Gauss.node(m)) / (Gauss.node(j) - Gauss.node(m));
            }
        }
        return product;
    }
}
