package culm.geometry.numeric;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The tables of Gauss collocation with {@value #STAGES} stages for y' = f(x, y) on one panel, order {@code 2 * STAGES} at the end of the panel (Hairer,
 * Norsett, Wanner, Solving Ordinary Differential Equations I, II.7), and the estimate by which a panel is accepted.
 */
public final class Collocation {
    /** Stages of a panel. */
    public static final int STAGES = 20;
    private static final int TAIL = 2;
    private static final double[] NODE = new double[STAGES];
    private static final double[] WEIGHT = new double[STAGES];
    private static final double[][] A = new double[STAGES][STAGES];
    private static final double[][] LAST = new double[TAIL][STAGES];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(STAGES, 0, 1);
        for (int i = 0; i < STAGES; i++) {
            NODE[i] = rule.getPoint(i);
            WEIGHT[i] = rule.getWeight(i);
        }
        for (int i = 0; i < STAGES; i++) {
            for (int j = 0; j < STAGES; j++) {
                for (int k = 0; k < STAGES; k++) {
                    A[i][j] += NODE[i] * WEIGHT[k] * lagrange(j, NODE[i] * NODE[k]);
                }
            }
            double[] p = legendre(2 * NODE[i] - 1);
            for (int k = 0; k < TAIL; k++) {
                int degree = STAGES - 1 - k;
                LAST[k][i] = (2 * degree + 1) * WEIGHT[i] * p[degree];
            }
        }
    }

    private Collocation() {
    }

    /** Place of stage i on [0, 1]. */
    public static double node(int i) {
        return NODE[i];
    }

    /** The sum of {@code A[i][j] slopes[j]}: how far y has come at stage i, for a panel of length 1. */
    public static double advance(int i, double[] slopes) {
        double[] row = A[i];
        double sum = 0;
        for (int j = 0; j < STAGES; j++) {
            sum += row[j] * slopes[j];
        }
        return sum;
    }

    /** The weighted sum of the slopes: how far y has come at the end of a panel of length 1. */
    public static double whole(double[] slopes) {
        double sum = 0;
        for (int j = 0; j < STAGES; j++) {
            sum += WEIGHT[j] * slopes[j];
        }
        return sum;
    }

    /**
     * The larger of the last two Legendre coefficients of the slopes, in size, against the mean slope. Coefficients of an analytic f fall like r^-k, and the
     * error at the end of the panel like r^-2n: about the square of this number.
     */
    public static double tail(double[] slopes) {
        double largest = 0;
        for (double[] row : LAST) {
            double sum = 0;
            for (int j = 0; j < STAGES; j++) {
                sum += row[j] * slopes[j];
            }
            largest = Math.max(largest, Math.abs(sum));
        }
        return largest / Math.abs(whole(slopes));
    }

    private static double lagrange(int j, double at) {
        double product = 1;
        for (int m = 0; m < STAGES; m++) {
            if (m != j) {
                product *= (at - NODE[m]) / (NODE[j] - NODE[m]);
            }
        }
        return product;
    }

    private static double[] legendre(double x) {
        double[] p = new double[STAGES];
        p[0] = 1;
        p[1] = x;
        for (int k = 1; k + 1 < STAGES; k++) {
            p[k + 1] = ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
        }
        return p;
    }
}
