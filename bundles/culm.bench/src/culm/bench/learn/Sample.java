package culm.bench.learn;

import java.util.Arrays;

import org.hipparchus.distribution.continuous.TDistribution;

/** Some numbers and what they say of their mean. */
record Sample(double[] values) {
    int count() {
        return values.length;
    }

    double mean() {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    /** Standard deviation, n - 1 in the denominator; NaN for fewer than two. */
    double spread() {
        double mean = mean();
        return values.length < 2 ? Double.NaN : Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1));
    }

    /** Student's two-sided quantile for this sample. */
    double student(double confidence) {
        return new TDistribution(values.length - 1).inverseCumulativeProbability(0.5 + confidence / 2);
    }

    /**
     * Half of the interval of the mean: Student's, but never below what the reading alone makes of it.
     * @param reading standard uncertainty of one value from reading alone
     */
    double half(double confidence, double reading) {
        double normal = new org.hipparchus.distribution.continuous.NormalDistribution().inverseCumulativeProbability(0.5 + confidence / 2);
        return Math.max(student(confidence) * spread(), normal * reading) / Math.sqrt(values.length);
    }
}
