package culm.workbench.internal.bench.batch;

import culm.bench.batch.BatchPlanner;

/**
 * How a batch is split. A file of staples has no place for it: it holds for the editor as long as that is open, as an option of a command does.
 *
 * @param step tie lengths are multiples of this, mm
 * @param margin turns to stay away from the limits on either side
 */
record SplitBy(double step, double margin) {
    /** As the command does it when nothing is said. */
    static final SplitBy USUAL = new SplitBy(BatchPlanner.USUAL_STEP, 0);

    SplitBy step(double now) {
        return new SplitBy(now, margin);
    }

    SplitBy margin(double now) {
        return new SplitBy(step, now);
    }
}
