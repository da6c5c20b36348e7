package culm.explore;

/**
 * How failures depend on one input: the share that fails where the input lies in the lowest, the middle, the highest third of what was drawn.
 *
 * @param path  the input
 * @param label its name
 */
public record Cause(String path, String label, Share low, Share middle, Share high) {
    /** Share that fails in the worst third minus that in the best: 0 when the input does not matter, 1 when it decides alone. */
    public double weight() {
        return Math.max(low.value(), Math.max(middle.value(), high.value())) - Math.min(low.value(), Math.min(middle.value(), high.value()));
    }

    /** Where most fail, in words. */
    public String where() {
        if (middle.value() >= low.value() && middle.value() >= high.value()) {
            return "in the middle";
        }
        return low.value() > high.value() ? "low" : "high";
    }

    /** Whether the worst and the best third differ by more than chance: their intervals do not touch. */
    public boolean certain() {
        double least = Math.min(low.high(), Math.min(middle.high(), high.high()));
        double most = Math.max(low.low(), Math.max(middle.low(), high.low()));
        return most > least;
    }
}
