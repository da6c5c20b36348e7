package culm.explore.internal.fast;

/**
 * Ellipses, a block at a time. Perimeter by the series in h = ((a-b)/(a+b))^2, P = pi (a+b) sum binom(1/2,k)^2 h^k (NIST DLMF 19.9.10 and
 * the series of 19.5.2 after Ivory's transformation), {@value #TERMS} terms: relative error below 3e-12 for axes up to {@value #MOST_OVAL} : 1, below 1e-15 up to 1.7 : 1.
 */
final class EllipseLanes {
    /** Largest ratio of the axes for which the stated error holds. */
    static final double MOST_OVAL = 3;
    private static final int TERMS = 12;
    private static final double[] C = coefficients();

    private EllipseLanes() {
    }

    private static double[] coefficients() {
        double[] c = new double[TERMS];
        double binomial = 1;
        for (int k = 0; k < TERMS; k++) {
            c[k] = binomial * binomial;
            binomial *= (0.5 - k) / (k + 1);
        }
        return c;
    }

    /**
     * A quarter of the perimeter and its slope along z.
     * @param a semi-axes, mm; @param da their slopes along z; the same for b
     */
    static void quarter(double[] a, double[] b, double[] da, double[] db, double[] quarter, double[] slope, int n) {
        double c1 = C[1];
        double c2 = C[2];
        double c3 = C[3];
        double c4 = C[4];
        double c5 = C[5];
        double c6 = C[6];
        double c7 = C[7];
        double c8 = C[8];
        double c9 = C[9];
        double c10 = C[10];
        double c11 = C[11];
        for (int l = 0; l < n; l++) {
            double sum = a[l] + b[l];
            double lambda = (a[l] - b[l]) / sum;
            double h = lambda * lambda;
            double tail = Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, c11, c10), c9), c8), c7), c6);
            double f = Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, tail, c5), c4), c3), c2), c1), 1);
            double df = Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, Math.fma(h, 6 * c6, 5 * c5), 4 * c4), 3 * c3), 2 * c2), c1);
            double both = da[l] + db[l];
            quarter[l] = Math.PI / 4 * sum * f;
            slope[l] = Math.PI / 4 * (both * f + 2 * df * lambda * ((da[l] - db[l]) - lambda * both));
        }
    }

    /** Radius of curvature a^2 b^2 / h^3 where the normal has turned by theta from the narrow axis. */
    static void curvature(double[] a, double[] b, double sin2, double cos2, double[] rho, int n) {
        for (int l = 0; l < n; l++) {
            double a2 = a[l] * a[l];
            double b2 = b[l] * b[l];
            double h2 = a2 * sin2 + b2 * cos2;
            rho[l] = a2 * b2 / (h2 * Math.sqrt(h2));
        }
    }
}
