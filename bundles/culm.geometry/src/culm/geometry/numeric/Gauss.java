package culm.geometry.numeric;

import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Gauss-Legendre quadrature of smooth functions on a finite interval, halved until two levels agree.
 * <p>Stated error: the difference between one panel of {@value #NODES} nodes and its two halves is below
 * {@code tolerance * max(1, |integral|)} for every accepted panel; for analytic integrands the accepted value is
 * better by many orders. At most {@value #MOST} panels are halved: a rough integrand is integrated less well, never without end. Integrands with kinks are given their kinks in {@link #integrate(DoubleUnaryOperator, double, double, double[])}.
 * Source: NIST DLMF 3.5(v).
 */
public final class Gauss {
    /** Nodes in one panel. */
    public static final int NODES = 12;
    private static final double TOLERANCE = 1e-13;
    private static final int DEEPEST = 40;
    private static final int MOST = 2000;
    private static final double[] X = new double[NODES];
    private static final double[] W = new double[NODES];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(NODES, 0, 1);
        for (int i = 0; i < NODES; i++) {
            X[i] = rule.getPoint(i);
            W[i] = rule.getWeight(i);
        }
    }

    private final DoubleUnaryOperator f;
    private final double tolerance;
    private int left = MOST;

    private Gauss(DoubleUnaryOperator f, double tolerance) {
        this.f = f;
        this.tolerance = tolerance;
    }

    /** Node i of the rule on [0, 1], 0 &lt;= i &lt; {@value #NODES}. */
    public static double node(int i) {
        return X[i];
    }

    /** Weight i of the rule on [0, 1]; all weights add up to 1. */
    public static double weight(int i) {
        return W[i];
    }

    /** Integral of f from a to b (b &lt; a changes the sign). */
    public static double integrate(DoubleUnaryOperator f, double a, double b) {
        return new Gauss(f, TOLERANCE).whole(a, b);
    }

    /** Integral from a to b, a &lt;= b, broken at those {@code breaks} (ascending) that lie between them. */
    public static double integrate(DoubleUnaryOperator f, double a, double b, double[] breaks) {
        return integrate(f, a, b, breaks, TOLERANCE);
    }

    /** The same with another tolerance, for integrands that are themselves known to fewer digits. */
    public static double integrate(DoubleUnaryOperator f, double a, double b, double[] breaks, double tolerance) {
        Gauss rule = new Gauss(f, tolerance);
        double sum = 0;
        double from = a;
        for (double cut : breaks) {
            if (cut > from && cut < b) {
                sum += rule.whole(from, cut);
                from = cut;
            }
        }
        return sum + rule.whole(from, b);
    }

    private double whole(double a, double b) {
        return a == b ? 0 : halve(a, b, panel(f, a, b), DEEPEST);
    }

    private double halve(double a, double b, double whole, int depth) {
        double mid = 0.5 * (a + b);
        double lower = panel(f, a, mid);
        double upper = panel(f, mid, b);
        double both = lower + upper;
        if (depth == 0 || !(Math.abs(both - whole) > tolerance * Math.max(1, Math.abs(both))) || --left < 0) {
            return both;
        }
        return halve(a, mid, lower, depth - 1) + halve(mid, b, upper, depth - 1);
    }

    /**
     * One panel of {@value #NODES} nodes, without a check: for integrands that are known to be as smooth as a polynomial of degree 23 on [a, b].
     */
    public static double panel(DoubleUnaryOperator f, double a, double b) {
        double sum = 0;
        double width = b - a;
        for (int i = 0; i < NODES; i++) {
            sum += W[i] * f.applyAsDouble(a + width * X[i]);
        }
        return sum * width;
    }
}
