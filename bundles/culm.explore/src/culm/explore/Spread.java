package culm.explore;

import java.util.Arrays;

import culm.explore.internal.run.NormalQuantile;

/**
 * How one number scatters. All but {@link Measured} are deviations from the base's own value, in the input's unit; every value is a
 * function of one u between 0 and 1, so that any source of u (counted, low-discrepancy) serves.
 */
public sealed interface Spread {
    /** The value for 0 &lt; u &lt; 1, never falling in u but for {@link Measured}. @param base the base's own value */
    double at(double u, double base);

    /** Smallest value, or negative infinity. */
    double low(double base);

    /** Largest value, or infinity. */
    double high(double base);

    /** Whether it moves anything. */
    default boolean moves() {
        return true;
    }

    /** Its name at the bench. */
    String label();

    /** Values for a whole column. */
    default void fill(double[] u, double base, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = at(u[l], base);
        }
    }

    /** Always the base's own value. */
    record Fixed() implements Spread {
        @Override
        public double at(double u, double base) {
            return base;
        }

        @Override
        public double low(double base) {
            return base;
        }

        @Override
        public double high(double base) {
            return base;
        }

        @Override
        public boolean moves() {
            return false;
        }

        @Override
        public String label() {
            return "fixed";
        }
    }

    /** Between two deviations. */
    sealed interface Within extends Spread permits Uniform, Triangular {
        /** Smallest deviation. */
        double low();

        /** Largest deviation. */
        double high();

        @Override
        default double low(double base) {
            return base + low();
        }

        @Override
        default double high(double base) {
            return base + high();
        }
    }

    /** Anywhere between two deviations, low &lt;= high. */
    record Uniform(double low, double high) implements Within {
        public Uniform {
            require(low <= high && Double.isFinite(high - low), "a range goes from low to high: " + low + ", " + high);
        }

        /** Within plus or minus a give or take, not negative. */
        public Uniform(double plusMinus) {
            this(-plusMinus, plusMinus);
        }

        @Override
        public double at(double u, double base) {
            return base + (low + (high - low) * u);
        }

        @Override
        public void fill(double[] u, double base, double[] out, int n) {
            double width = high - low;
            for (int l = 0; l < n; l++) {
                out[l] = base + (low + width * u[l]);
            }
        }

        @Override
        public boolean moves() {
            return high > low;
        }

        @Override
        public String label() {
            return "uniform";
        }
    }

    /** Normal around the base's own value. @param deviation standard deviation, positive */
    record Normal(double deviation) implements Spread {
        public Normal {
            require(deviation > 0 && Double.isFinite(deviation), "a standard deviation is positive: " + deviation);
        }

        @Override
        public double at(double u, double base) {
            return base + deviation * NormalQuantile.at(u);
        }

        @Override
        public void fill(double[] u, double base, double[] out, int n) {
            NormalQuantile.fill(u, base, deviation, out, n);
        }

        @Override
        public double low(double base) {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double high(double base) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public String label() {
            return "normal";
        }
    }

    /** Triangular between two deviations with its peak at a third, low &lt;= peak &lt;= high, low &lt; high. */
    record Triangular(double low, double peak, double high) implements Within {
        public Triangular {
            require(low <= peak && peak <= high && low < high && Double.isFinite(high - low), "a triangle needs low <= peak <= high: " + low + ", " + peak + ", " + high);
        }

        @Override
        public double at(double u, double base) {
            double split = (peak - low) / (high - low);
            return base + (u < split ? low + Math.sqrt(u * (high - low) * (peak - low)) : high - Math.sqrt((1 - u) * (high - low) * (high - peak)));
        }

        @Override
        public String label() {
            return "triangular";
        }
    }

    /**
     * One of these measured values, each as likely as the others; the base's own value does not count.
     * @param group inputs of the same group take the same row, as the length and the top of one staple; empty for none
     */
    record Measured(double[] values, String group) implements Spread {
        public Measured {
            values = values.clone();
            require(values.length > 0 && Arrays.stream(values).allMatch(Double::isFinite), "measured rows have to be numbers, at least one");
        }

        @Override
        public double at(double u, double base) {
            return values[(int) (u * values.length)];
        }

        @Override
        public double low(double base) {
            return Arrays.stream(values).min().orElseThrow();
        }

        @Override
        public double high(double base) {
            return Arrays.stream(values).max().orElseThrow();
        }

        @Override
        public String label() {
            return "measured";
        }
    }

    private static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }
}
