package culm.bench.batch;

import culm.geometry.words.Told;

/**
 * A reading to look at again.
 *
 * @param staple    whose reading
 * @param dimension which one
 * @param value     the reading in doubt, mm
 * @param told      why, one sentence for the bench, its lengths as {@link Told} keeps them
 */
public record Doubt(StapleReadings staple, Dimension dimension, double value, String told) {
    /** Why, one sentence for the bench, lengths in mm. */
    public String why() {
        return Told.mm(told);
    }
}
