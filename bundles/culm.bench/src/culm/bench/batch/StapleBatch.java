package culm.bench.batch;

import java.util.List;

/**
 * Staples as they came.
 *
 * @param name         of the batch
 * @param staples      in the order they were measured
 * @param caliper      what they were measured with
 * @param wrapBelowTop how far the wrap stops below each staple's own top, mm, not negative
 * @param by           how it is to be split
 */
public record StapleBatch(String name, List<StapleReadings> staples, Caliper caliper, double wrapBelowTop, SplitBy by) {
    /** @throws IllegalArgumentException when the wrap would stop above the staples */
    public StapleBatch {
        staples = List.copyOf(staples);
        if (!(wrapBelowTop >= 0 && Double.isFinite(wrapBelowTop))) {
            throw new IllegalArgumentException("The wrap stops at or below the staple's top: " + wrapBelowTop + " mm below it is not possible.");
        }
    }

    /** A batch that is split as usual. */
    public StapleBatch(String name, List<StapleReadings> staples, Caliper caliper, double wrapBelowTop) {
        this(name, staples, caliper, wrapBelowTop, SplitBy.USUAL);
    }
}
