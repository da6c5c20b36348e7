package culm.bench.batch;

/**
 * A staple and the setting that serves it.
 *
 * @param staple    as measured
 * @param ties      what it allows
 * @param tie       tie length of its setting, mm
 * @param wrapTop   top of the wrap on this staple, mm from its bottom
 * @param turnsLeft turns left that the model expects at this tie length
 */
public record Served(StapleReadings staple, StapleTies ties, double tie, double wrapTop, double turnsLeft) {
    /** Cane above the staple, mm: what a pencil mark from the fold shows. */
    public double caneAbove() {
        return tie - staple.length().orElseThrow();
    }
}
