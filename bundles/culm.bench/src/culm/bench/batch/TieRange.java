package culm.bench.batch;

/**
 * Tie lengths that a staple allows, from {@code low} to {@code high}, both included, mm; and what ends them on either side.
 */
public record TieRange(double low, double high, Bound below, Bound above) {
}
