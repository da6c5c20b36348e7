package culm.figures;

/**
 * A straight axis of a graph.
 *
 * @param from  value at its start
 * @param to    value at its end, another one
 * @param start where it starts, drawing units
 * @param end   where it ends
 */
public record Axis(double from, double to, double start, double end) {
    /** @throws IllegalArgumentException when it has no length */
    public Axis {
        if (from == to || start == end || !Double.isFinite(from + to + start + end)) {
            throw new IllegalArgumentException("an axis needs a length: " + from + " to " + to + " on " + start + " to " + end);
        }
    }

    /** Where a value lies, drawing units. */
    public double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** The value at a place. */
    public double value(double place) {
        return from + (place - start) / (end - start) * (to - from);
    }
}
