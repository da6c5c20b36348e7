package culm.geometry.numeric;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The tables of Gauss collocation with n stages for y' = f(x, y) on one panel, order 2 n at the end of the panel (Hairer, Norsett, Wanner, Solving Ordinary
 * Differential Equations I, II.7), and the estimate by which a panel is accepted. Immutable.
 */
public final class Collocation {
    private static final int TAIL = 2;
    private final int n;
    private final double[] node;
    private final double[] weight;
    private final double[][] a;
    private final double[][] last;

    /** @param stages number of stages, 3 to 40 */
    public Collocation(int stages) {
        if (stages < TAIL + 1 || stages > 40) {
            throw new IllegalArgumentException("collocation with " + stages + " stages");
        }
        n = stages;
        node = new double[n];
        weight = new double[n];
        a = new double[n][n];
        last = new double[TAIL][n];
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(n, 0, 1);
        for (int i = 0; i < n; i++) {
            node[i] = rule.getPoint(i);
            weight[i] = rule.getWeight(i);
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    a[i][j] += node[i] * weight[k] * lagrange(j, node[i] * node[k]);
                }
            }
            double[] p = legendre(2 * node[i] - 1);
            for (int k = 0; k < TAIL; k++) {
                int degree = n - 1 - k;
                last[k][i] = (2 * degree + 1) * weight[i] * p[degree];
            }
        }
    }

    /** Number of stages. */
    public int stages() {
        return n;
    }

    /** Place of stage i on [0, 1]. */
    public double node(int i) {
        return node[i];
    }

    /** How far y has come at each stage of a panel of length 1. @param slopes y' at the stages; @param come receives the result */
    public void advance(double[] slopes, double[] come) {
        int i = 0;
        for (; i + 3 < n; i += 4) { // four sums at a time, since each waits for its own last term only
            double[] first = a[i];
            double[] second = a[i + 1];
            double[] third = a[i + 2];
            double[] fourth = a[i + 3];
            double s = 0;
            double t = 0;
            double u = 0;
            double v = 0;
            for (int j = 0; j < n; j++) {
                double slope = slopes[j];
                s += first[j] * slope;
                t += second[j] * slope;
                u += third[j] * slope;
                v += fourth[j] * slope;
            }
            come[i] = s;
            come[i + 1] = t;
            come[i + 2] = u;
            come[i + 3] = v;
        }
        for (; i < n; i++) {
            come[i] = dot(a[i], slopes);
        }
    }

    /** How far y has come at the end of a panel of length 1. */
    public double whole(double[] slopes) {
        return dot(weight, slopes);
    }

    /**
     * The larger of the last two Legendre coefficients of the slopes, in size, against the mean slope. Coefficients of an analytic f fall like r^-k, and the
     * error at the end of the panel like r^-2n: about the square of this number.
     */
    public double tail(double[] slopes) {
        double largest = 0;
        for (double[] row : last) {
            largest = Math.max(largest, Math.abs(dot(row, slopes)));
        }
        return largest / Math.abs(whole(slopes));
    }

    private double dot(double[] row, double[] slopes) {
        double sum = 0;
        for (int j = 0; j < n; j++) {
            sum += row[j] * slopes[j];
        }
        return sum;
    }

    private double lagrange(int j, double at) {
        double product = 1;
        for (int m = 0; m < n; m++) {
            if (m != j) {
                product *= (at - node[m]) / (node[j] - node[m]);
            }
        }
        return product;
    }

    private double[] legendre(double x) {
        double[] p = new double[n];
        p[0] = 1;
        p[1] = x;
        for (int k = 1; k + 1 < n; k++) {
            p[k + 1] = ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
        }
        return p;
    }
}
