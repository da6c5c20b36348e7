package culm.geometry.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A polynomial on [a, b] as a Chebyshev series, made to stand for a smooth function that is slow to compute: value, slope and every root and turning
 * point of it are quick. Interpolated in the extrema of the last Chebyshev polynomial, so both ends are met exactly.
 * <p>Stated error: {@link #tail()}, the largest of the last three coefficients, bounds the distance to an analytic function up to a small
 * factor. Source: NIST DLMF 3.11(ii).
 */
public final class Chebyshev {
    private static final int TAIL = 3;
    private static final double SAME = 1e-12;
    private final double a;
    private final double b;
    private final double[] c;
    private final double[] slope;

    private Chebyshev(double a, double b, double[] values) {
        this.a = a;
        this.b = b;
        this.c = coefficients(values);
        this.slope = derivative(c);
    }

    /** Place i of n + 1 on [a, b], i = 0 at b and i = n at a. */
    public static double node(double a, double b, int i, int n) {
        if (i == 0 || i == n) {
            return i == 0 ? b : a;
        }
        return 0.5 * (a + b) + 0.5 * (b - a) * Math.cos(Math.PI * i / n);
    }

    /** The polynomial with these values at the places {@link #node(double, double, int, int)}, i from 0; at least two values. */
    public static Chebyshev through(double a, double b, double... values) {
        return new Chebyshev(a, b, values);
    }

    /** The polynomial of degree n that meets f at the places {@link #node(double, double, int, int)}. */
    public static Chebyshev of(DoubleUnaryOperator f, double a, double b, int n) {
        double[] values = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            values[i] = f.applyAsDouble(node(a, b, i, n));
        }
        return new Chebyshev(a, b, values);
    }

    /** Lower end. */
    public double from() {
        return a;
    }

    /** Upper end. */
    public double to() {
        return b;
    }

    /** Largest of the last three coefficients, in size. */
    public double tail() {
        double largest = 0;
        for (int k = Math.max(0, c.length - TAIL); k < c.length; k++) {
            largest = Math.max(largest, Math.abs(c[k]));
        }
        return largest;
    }

    /** Value at x; meant for a &lt;= x &lt;= b, a polynomial outside as well. */
    public double value(double x) {
        return clenshaw(c, unit(x));
    }

    /** First derivative at x. */
    public double slope(double x) {
        return clenshaw(slope, unit(x)) * 2 / (b - a);
    }

    /** Where the value changes sign within [a, b], ascending, to 1e-12 of the length. */
    public List<Double> roots() {
        return signChanges(c);
    }

    /** Where the slope changes sign within [a, b], ascending. */
    public List<Double> turns() {
        return signChanges(slope);
    }

    /**
     * Sign changes between samples evenly spaced in the angle, eight for each degree: a polynomial of degree n turns at most n - 1 times, and in
     * the angle no two of its turns that matter come closer.
     */
    private List<Double> signChanges(double[] series) {
        List<Double> found = new ArrayList<>();
        int steps = 8 * Math.max(2, series.length - 1);
        double before = -1;
        double fBefore = clenshaw(series, before);
        for (int i = 1; i <= steps; i++) {
            double here = i == steps ? 1 : -Math.cos(Math.PI * i / steps);
            double f = clenshaw(series, here);
            if (fBefore < 0 != f < 0) {
                found.add(0.5 * (a + b) + 0.5 * (b - a) * narrow(series, before, here, fBefore));
            }
            before = here;
            fBefore = f;
        }
        return found;
    }

    private static double narrow(double[] series, double from, double to, double fFrom) {
        double lo = from;
        double hi = to;
        double fLo = fFrom;
        double fHi = clenshaw(series, to);
        int side = 0;
        for (int round = 0; round < 200 && hi - lo > SAME; round++) {
            double mid = fHi == fLo ? 0.5 * (lo + hi) : (lo * fHi - hi * fLo) / (fHi - fLo);
            if (!(mid > lo && mid < hi)) {
                mid = 0.5 * (lo + hi);
            }
            double f = clenshaw(series, mid);
            if (f == 0) {
                return mid;
            }
            if (fLo < 0 == f < 0) {
                lo = mid;
                fLo = f;
                fHi = side == -1 ? fHi / 2 : fHi;
                side = -1;
            } else {
                hi = mid;
                fHi = f;
                fLo = side == 1 ? fLo / 2 : fLo;
                side = 1;
            }
            if (Math.abs(f) < 1e-17) {
                return mid;
            }
        }
        return 0.5 * (lo + hi);
    }

    private double unit(double x) {
        return (2 * x - a - b) / (b - a);
    }

    private static double clenshaw(double[] series, double x) {
        double b1 = 0;
        double b2 = 0;
        for (int k = series.length - 1; k >= 1; k--) {
            double next = series[k] + 2 * x * b1 - b2;
            b2 = b1;
            b1 = next;
        }
        return series[0] + x * b1 - b2;
    }

    private static double[] coefficients(double[] values) {
        int n = values.length - 1;
        double[] c = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            double sum = 0.5 * (values[0] + (k % 2 == 0 ? values[n] : -values[n]));
            for (int i = 1; i < n; i++) {
                sum += values[i] * Math.cos(Math.PI * i * k / n);
            }
            c[k] = sum * (k == 0 || k == n ? 1 : 2) / n;
        }
        return c;
    }

    /** Coefficients of the derivative with respect to the unit variable: d_{k-1} = d_{k+1} + 2 k c_k, the first halved. */
    private static double[] derivative(double[] c) {
        int n = c.length - 1;
        double[] d = new double[Math.max(1, n)];
        for (int k = n; k >= 1; k--) {
            d[k - 1] = (k + 1 < d.length ? d[k + 1] : 0) + 2 * k * c[k];
        }
        d[0] /= 2;
        return d;
    }
}
