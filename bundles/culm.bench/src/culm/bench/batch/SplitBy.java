package culm.bench.batch;

/**
 * How a batch is split.
 *
 * @param step   tie lengths are multiples of this, mm, above 0
 * @param margin turns to stay away from the limits on either side, not negative
 */
public record SplitBy(double step, double margin) {
    /** Where nothing is said. */
    public static final SplitBy USUAL = new SplitBy(BatchPlanner.USUAL_STEP, 0);

    /** @throws IllegalArgumentException when no tie length could be a multiple, or the limits would be widened */
    public SplitBy {
        if (!(step > 0 && margin >= 0 && Double.isFinite(step + margin))) {
            throw new IllegalArgumentException("a batch cannot be split in steps of " + step + " mm with " + margin + " turns to spare");
        }
    }
}
