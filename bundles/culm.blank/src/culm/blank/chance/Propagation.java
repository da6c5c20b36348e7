package culm.blank.chance;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Distributions propagated through a model by seeded draws (JCGM 101:2008, 7). The result is the same for any number of threads. A draw for which the
 * model has no value may give positive infinity ("never") and then counts as the highest; NaN is refused.
 */
public final class Propagation {
    private final double[] sorted;

    private Propagation(double[] values) {
        for (double v : values) {
            if (Double.isNaN(v)) {
                throw new IllegalArgumentException("the model gave no number for a draw");
            }
        }
        this.sorted = values;
        Arrays.sort(sorted);
    }

    /**
     * Draws the inputs and runs the model on each draw, in parallel.
     * @param model  one value from as many inputs as there are distributions; called by several threads; must not keep the array
     * @param inputs the inputs' distributions
     * @param draws  how many, at least 2
     * @param seed   the same seed gives the same result
     */
    public static Propagation of(ToDoubleFunction<double[]> model, List<? extends Distribution> inputs, int draws, long seed) {
        Draws random = new Draws(seed);
        double[] values = new double[draws];
        IntStream.range(0, draws).parallel().forEach(i -> {
            double[] x = new double[inputs.size()];
            for (int k = 0; k < x.length; k++) {
                x[k] = inputs.get(k).quantile(random.uniform(i, k));
            }
            values[i] = model.applyAsDouble(x);
        });
        return new Propagation(values);
    }

    /** The result of values that were drawn elsewhere; at least 2, copied. */
    public static Propagation ofValues(double... values) {
        return new Propagation(values.clone());
    }

    /** Number of draws. */
    public int draws() {
        return sorted.length;
    }

    /** Mean of the draws. */
    public double mean() {
        return Arrays.stream(sorted).average().getAsDouble();
    }

    /** Standard deviation of the draws. */
    public double standardUncertainty() {
        double mean = mean();
        return Math.sqrt(Arrays.stream(sorted).map(y -> (y - mean) * (y - mean)).sum() / (sorted.length - 1));
    }

    /** Share of the draws at or below a value, 0 to 1. */
    public double shareUpTo(double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (sorted[mid] <= value) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return (double) low / sorted.length;
    }

    /** The value that a share p of the draws does not pass, 0 &lt;= p &lt;= 1. */
    public double quantile(double p) {
        return sorted[(int) Math.min(sorted.length - 1, Math.max(0, Math.ceil(p * sorted.length) - 1))];
    }

    /** Interval that holds a share p and leaves as much below as above (JCGM 101:2008, 7.7.2). */
    public Interval symmetric(double p) {
        int q = held(p);
        int r = (sorted.length - q) / 2;
        return new Interval(sorted[Math.max(0, r - 1)], sorted[Math.min(sorted.length - 1, Math.max(0, r - 1) + q)]);
    }

    /** Shortest interval that holds a share p (JCGM 101:2008, 7.7.4). */
    public Interval shortest(double p) {
        int q = held(p);
        int best = 0;
        for (int r = 1; r + q < sorted.length; r++) {
            if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) {
                best = r;
            }
        }
        return new Interval(sorted[best], sorted[best + q]);
    }

    private int held(double p) {
        return (int) Math.min(sorted.length - 1, Math.round(p * sorted.length));
    }

    /** Two ends, low &lt;= high. */
    public record Interval(double low, double high) {
        /** Half of the distance of both ends. */
        public double half() {
            return (high - low) / 2;
        }
    }
}
