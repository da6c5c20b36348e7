package culm.blank.chance;

import java.util.Arrays;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** How an input varies, in the input's own unit (JCGM 101:2008, 6.4). Immutable. */
public sealed interface Distribution {
    /** Expected value. */
    double mean();

    /** Standard deviation, not negative. */
    double standardUncertainty();

    /** How far it reaches from the mean to either side, for worst cases; for a normal distribution, which has no end, the 95 % half-width. */
    double reach();

    /** The value that is not passed with probability p, 0 &lt; p &lt; 1. Drawing a uniform p draws from the distribution. */
    double quantile(double p);

    /** Does not vary. */
    record Fixed(double mean) implements Distribution {
        @Override
        public double standardUncertainty() {
            return 0;
        }

        @Override
        public double reach() {
            return 0;
        }

        @Override
        public double quantile(double p) {
            return mean;
        }
    }

    /** Any value within plus or minus {@code reach}, each as likely as the other; u = reach / sqrt 3. */
    record Uniform(double mean, double reach) implements Distribution {
        /** @throws IllegalArgumentException when the reach is negative or not a number */
        public Uniform {
            requirePositive(reach);
        }

        @Override
        public double standardUncertainty() {
            return reach / Math.sqrt(3);
        }

        @Override
        public double quantile(double p) {
            return mean + reach * (2 * p - 1);
        }
    }

    /** Most likely in the middle, falling straight to nothing at plus or minus {@code reach}; u = reach / sqrt 6. */
    record Triangular(double mean, double reach) implements Distribution {
        /** @throws IllegalArgumentException when the reach is negative or not a number */
        public Triangular {
            requirePositive(reach);
        }

        @Override
        public double standardUncertainty() {
            return reach / Math.sqrt(6);
        }

        @Override
        public double quantile(double p) {
            return p < 0.5 ? mean - reach * (1 - Math.sqrt(2 * p)) : mean + reach * (1 - Math.sqrt(2 * (1 - p)));
        }
    }

    /** Normal (Gauss). */
    record Normal(double mean, double standardUncertainty) implements Distribution {
        private static final NormalDistribution UNIT = new NormalDistribution();

        /** @throws IllegalArgumentException when the standard uncertainty is negative or not a number */
        public Normal {
            requirePositive(standardUncertainty);
        }

        @Override
        public double reach() {
            return 1.959963984540054 * standardUncertainty;
        }

        @Override
        public double quantile(double p) {
            return mean + standardUncertainty * UNIT.inverseCumulativeProbability(p);
        }
    }

    /** As in a list of measured values: each row is as likely as the other, nothing between them occurs. */
    final class Measured implements Distribution {
        private final double[] sorted;
        private final double mean;
        private final double deviation;

        /** @param rows measured values, at least one, all finite */
        public Measured(double... rows) {
            if (rows.length == 0 || !Arrays.stream(rows).allMatch(Double::isFinite)) {
                throw new IllegalArgumentException("measured rows are needed, each a number");
            }
            sorted = rows.clone();
            Arrays.sort(sorted);
            mean = Arrays.stream(sorted).average().getAsDouble();
            deviation = Math.sqrt(Arrays.stream(sorted).map(x -> (x - mean) * (x - mean)).average().getAsDouble());
        }

        @Override
        public double mean() {
            return mean;
        }

        @Override
        public double standardUncertainty() {
            return deviation;
        }

        @Override
        public double reach() {
            return Math.max(mean - sorted[0], sorted[sorted.length - 1] - mean);
        }

        @Override
        public double quantile(double p) {
            return sorted[Math.min(sorted.length - 1, (int) (p * sorted.length))];
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Measured m && Arrays.equals(sorted, m.sorted);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(sorted);
        }

        @Override
        public String toString() {
            return "Measured" + Arrays.toString(sorted);
        }
    }

    private static void requirePositive(double size) {
        if (!(size >= 0 && Double.isFinite(size))) {
            throw new IllegalArgumentException("a distribution's width is not negative: " + size);
        }
    }
}
