package culm.geometry.numeric;

import java.util.function.DoubleUnaryOperator;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * The smallest value of a continuous function on an interval: samples first, then Brent's search (Hipparchus) around the smallest sample.
 *
 * @param at    where it is
 * @param value the smallest value
 */
public record Minimum(double at, double value) {
    private static final double RELATIVE = 1e-9;
    private static final double ABSOLUTE = 1e-12;

    /**
     * The smallest value between a and b, a &lt; b, both ends included.
     * @param steps number of equal steps that are sampled first, at least 2; dips narrower than one step may be missed
     * @return the minimum, its place to about 1e-8 of the interval, its value to the square of that for smooth f
     */
    public static Minimum between(DoubleUnaryOperator f, double a, double b, int steps) {
        double best = Double.POSITIVE_INFINITY;
        int at = 0;
        double step = (b - a) / steps;
        for (int i = 0; i <= steps; i++) {
            double value = f.applyAsDouble(i == steps ? b : a + i * step);
            if (value < best) {
                best = value;
                at = i;
            }
        }
        double sampled = at == steps ? b : a + at * step;
        UnivariatePointValuePair found = new BrentOptimizer(RELATIVE, ABSOLUTE).optimize(MaxEval.unlimited(), GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(f::applyAsDouble), new SearchInterval(Math.max(a, sampled - step), Math.min(b, sampled + step)));
        return found.getValue() < best ? new Minimum(found.getPoint(), found.getValue()) : new Minimum(sampled, best);
    }
}
