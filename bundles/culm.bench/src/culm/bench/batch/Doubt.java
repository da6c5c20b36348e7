package culm.bench.batch;

/**
 * A reading to look at again.
 *
 * @param staple    whose reading
 * @param dimension which one
 * @param value     the reading in doubt, mm
 * @param why       one sentence for the bench
 */
public record Doubt(StapleReadings staple, Dimension dimension, double value, String why) {
}
