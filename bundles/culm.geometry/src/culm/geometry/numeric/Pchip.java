package culm.geometry.numeric;

/**
 * Monotone piecewise cubic through measured rows: Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304,
 * doi:10.1137/0905021. Inner slopes are the weighted harmonic mean of the neighbouring slopes (0 where they differ in sign);
 * end slopes come from the non-centred three-point formula, 0 when its sign differs from the end slope's and at most three
 * times the end slope when the last two slopes differ in sign. Two rows give a straight line. Nothing is extrapolated.
 */
public final class Pchip {
    private final double[] x;
    private final double[] y;
    private final double[] d;
    private final double[] sums;

    /**
     * @param x places, strictly ascending, at least two, finite
     * @param y values, as many as places, finite
     * @throws IllegalArgumentException when the rows are not so
     */
    public Pchip(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException("at least two rows are needed, with a value each");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw new IllegalArgumentException("row " + (i + 1) + " is not a number");
            }
            if (i > 0 && x[i] <= x[i - 1]) {
                throw new IllegalArgumentException("row " + (i + 1) + " is out of order");
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.d = slopes(this.x, this.y);
        this.sums = sums(this.x, this.y, this.d);
    }

    /** First place. */
    public double from() {
        return x[0];
    }

    /** Last place. */
    public double to() {
        return x[x.length - 1];
    }

    /** The places of the rows, where the third derivative jumps. */
    public double[] places() {
        return x.clone();
    }

    /** Whether {@code at} lies within the rows. */
    public boolean covers(double at) {
        return at >= from() && at <= to();
    }

    /** @throws IllegalArgumentException outside the rows */
    public double value(double at) {
        int i = interval(at);
        double h = x[i + 1] - x[i];
        double u = (at - x[i]) / h;
        double v = 1 - u;
        return v * v * (1 + 2 * u) * y[i] + u * u * (3 - 2 * u) * y[i + 1] + h * u * v * (v * d[i] - u * d[i + 1]);
    }

    /** First derivative; @throws IllegalArgumentException outside the rows */
    public double slope(double at) {
        int i = interval(at);
        double h = x[i + 1] - x[i];
        double u = (at - x[i]) / h;
        double step = (y[i + 1] - y[i]) / h;
        return 6 * u * (1 - u) * step + (1 - u) * (1 - 3 * u) * d[i] + u * (3 * u - 2) * d[i + 1];
    }

    /** Exact integral from the first place to {@code at}; @throws IllegalArgumentException outside the rows */
    public double integral(double at) {
        int i = interval(at);
        double h = x[i + 1] - x[i];
        double u = (at - x[i]) / h;
        double w = u * u * u;
        double value = (u - w + 0.5 * u * w) * y[i] + (w - 0.5 * u * w) * y[i + 1];
        double slope = (0.5 * u * u - 2 * w / 3 + 0.25 * u * w) * d[i] + (0.25 * u * w - w / 3) * d[i + 1];
        return sums[i] + h * (value + h * slope);
    }

    private int interval(double at) {
        if (!covers(at)) {
            throw new IllegalArgumentException(at + " is outside the measured places " + from() + " to " + to());
        }
        int low = 0;
        int high = x.length - 1;
        while (high - low > 1) {
            int mid = (low + high) >>> 1;
            if (x[mid] <= at) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return low;
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] h = new double[n - 1];
        double[] s = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            h[i] = x[i + 1] - x[i];
            s[i] = (y[i + 1] - y[i]) / h[i];
        }
        double[] d = new double[n];
        if (n == 2) {
            d[0] = s[0];
            d[1] = s[0];
            return d;
        }
        d[0] = end(h[0], h[1], s[0], s[1]);
        d[n - 1] = end(h[n - 2], h[n - 3], s[n - 2], s[n - 3]);
        for (int i = 1; i < n - 1; i++) {
            if (s[i - 1] * s[i] > 0) {
                double before = h[i - 1] + 2 * h[i];
                double after = 2 * h[i - 1] + h[i];
                d[i] = (before + after) / (before / s[i - 1] + after / s[i]);
            }
        }
        return d;
    }

    /** Integrals up to each place: an interval adds h (y0 + y1) / 2 + h^2 (d0 - d1) / 12. */
    private static double[] sums(double[] x, double[] y, double[] d) {
        double[] sums = new double[x.length];
        for (int i = 0; i + 1 < x.length; i++) {
            double h = x[i + 1] - x[i];
            sums[i + 1] = sums[i] + h * (y[i] + y[i + 1]) / 2 + h * h * (d[i] - d[i + 1]) / 12;
        }
        return sums;
    }

    private static double end(double h0, double h1, double s0, double s1) {
        double slope = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
        if (Math.signum(slope) != Math.signum(s0)) {
            return 0;
        }
        return Math.signum(s0) != Math.signum(s1) && Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope;
    }
}
