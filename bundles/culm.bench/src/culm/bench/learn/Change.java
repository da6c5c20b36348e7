package culm.bench.learn;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A place in a series from which on its mean is another one: the split with the largest t of both parts, at least {@value #SHORTEST} long; how rare such a
 * t is by chance is found by shuffling the series {@value #SHUFFLES} times (a permutation test, the same for the same numbers).
 *
 * @param at    index of the first value after the change
 * @param by    mean after minus mean before
 * @param chance share of shuffled series with as large a step
 */
record Change(int at, double by, double chance) {
    static final int SHORTEST = 3;
    private static final int SHUFFLES = 999;
    private static final double RARE = 0.01;

    /** The change, if it is rarer than one in a hundred. */
    static Optional<Change> in(double[] values) {
        if (values.length < 2 * SHORTEST) {
            return Optional.empty();
        }
        int at = best(values);
        double found = Math.abs(step(values, at));
        SplittableRandom random = new SplittableRandom(java.util.Arrays.hashCode(values));
        double[] shuffled = values.clone();
        int asLarge = 1;
        for (int k = 0; k < SHUFFLES; k++) {
            for (int i = shuffled.length - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                double swap = shuffled[i];
                shuffled[i] = shuffled[j];
                shuffled[j] = swap;
            }
            asLarge += Math.abs(step(shuffled, best(shuffled))) >= found ? 1 : 0;
        }
        double chance = asLarge / (SHUFFLES + 1.0);
        return chance <= RARE ? Optional.of(new Change(at, mean(values, at, values.length) - mean(values, 0, at), chance)) : Optional.empty();
    }

    /**
     * The largest change at places where something is known to have changed, if a t as large is rarer than one in a hundred by chance (Student, both parts
     * with one spread); such places need no search, and so fewer values are enough.
     */
    static Optional<Change> at(double[] values, List<Integer> places) {
        Optional<Change> found = Optional.empty();
        for (int at : places) {
            if (at >= SHORTEST && at <= values.length - SHORTEST) {
                double chance = 2 * new TDistribution(values.length - 2).cumulativeProbability(-Math.abs(step(values, at)));
                if (chance <= RARE / places.size() && found.filter(f -> f.chance <= chance).isEmpty()) {
                    found = Optional.of(new Change(at, mean(values, at, values.length) - mean(values, 0, at), chance));
                }
            }
        }
        return found;
    }

    private static int best(double[] values) {
        int best = SHORTEST;
        for (int at = SHORTEST; at <= values.length - SHORTEST; at++) {
            if (Math.abs(step(values, at)) > Math.abs(step(values, best))) {
                best = at;
            }
        }
        return best;
    }

    /** Difference of both means over its standard deviation, pooled. */
    private static double step(double[] values, int at) {
        double before = mean(values, 0, at);
        double after = mean(values, at, values.length);
        double square = 1e-18;
        for (int i = 0; i < values.length; i++) {
            double off = values[i] - (i < at ? before : after);
            square += off * off;
        }
        return (after - before) / Math.sqrt(square / (values.length - 2) * (1.0 / at + 1.0 / (values.length - at)));
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }
}
