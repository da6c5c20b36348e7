package culm.geometry.guard;

import java.time.Duration;
import java.util.Optional;

/**
 * How someone else's code has behaved since the program started.
 *
 * @param calls       how often it was called
 * @param total       how long it took altogether
 * @param longest     its longest call
 * @param failures    how often it threw, gave no number, or was too slow
 * @param lastFailure what happened last, one sentence that names the plug-in
 * @param stopped     true when it is not called any more because it was too slow
 */
public record Health(long calls, Duration total, Duration longest, long failures, Optional<String> lastFailure, boolean stopped) {
    /** Mean time of a call. */
    public Duration mean() {
        return calls == 0 ? Duration.ZERO : total.dividedBy(calls);
    }
}
