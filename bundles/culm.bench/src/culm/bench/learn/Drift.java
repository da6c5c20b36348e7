package culm.bench.learn;

import java.util.Optional;

import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A steady move of a series: the slope of a straight line through it, told when it is rarer than one in a hundred by chance (Student's test of the slope).
 *
 * @param perBlank mm from one blank to the next
 * @param chance   how rare by chance
 */
public record Drift(double perBlank, double chance) {
    private static final int FEWEST = 6;
    private static final double RARE = 0.01;

    static Optional<Drift> in(double[] values) {
        if (values.length < FEWEST) {
            return Optional.empty();
        }
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < values.length; i++) {
            line.addData(i, values[i]);
        }
        double chance = line.getSignificance();
        return chance <= RARE ? Optional.of(new Drift(line.getSlope(), chance)) : Optional.empty();
    }
}
