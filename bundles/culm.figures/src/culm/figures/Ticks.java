package culm.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * Round numbers along an axis: steps of 1, 2 or 5 times a power of ten.
 *
 * @param step   distance of two ticks
 * @param digits decimals that a tick needs
 * @param values the ticks, ascending
 */
public record Ticks(double step, int digits, List<Double> values) {
    private static final double[] ROUND = {1, 2, 5, 10};

    /**
     * Ticks within a range.
     * @param most at most so many steps, at least 1
     * @throws IllegalArgumentException when the range has no length
     */
    public static Ticks within(double from, double to, double most) {
        return stepped(from, to, niceStep((to - from) / Math.max(1, most)));
    }

    /** Ticks at the multiples of a step. */
    public static Ticks stepped(double from, double to, double step) {
        if (!(to > from && step > 0) || !Double.isFinite(to - from) || (to - from) / step > 100_000) {
            throw new IllegalArgumentException("no ticks from " + from + " to " + to + " by " + step);
        }
        int digits = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        List<Double> values = new ArrayList<>();
        double slack = 1e-9 * step;
        for (long k = (long) Math.ceil((from - slack) / step); k * step <= to + slack; k++) {
            values.add(k == 0 ? 0.0 : k * step);
        }
        return new Ticks(step, digits, List.copyOf(values));
    }

    /** The smallest round step that is not below a given one. */
    public static double niceStep(double atLeast) {
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (double m : ROUND) {
            if (m * power >= atLeast * (1 - 1e-9)) {
                return m * power;
            }
        }
        return 10 * power;
    }

    /** A tick as text. */
    public String label(double value) {
        return Numbers.fixed(value, digits);
    }
}
