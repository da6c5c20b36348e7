package culm.geometry.guard;

import java.time.Duration;

/**
 * How much time someone else's code may take: {@code allowed} for any {@code calls} calls in a row. A single call counts at most half of it,
 * so that one hiccup of the machine stops nothing.
 *
 * @param calls   number of calls, positive
 * @param allowed time for all of them together
 */
public record Budget(int calls, Duration allowed) {
    /** For geometry, which is asked tens of thousands of times for one blank: a millisecond a call on average. */
    public static final Budget GEOMETRY = new Budget(1000, Duration.ofSeconds(1));
    /** For rules, which are asked once for each blank and may solve something: half a second on average. */
    public static final Budget RULES = new Budget(10, Duration.ofSeconds(5));

    /** For a sentence: {@code 1.0 s for 1000 calls}. */
    String said() {
        return Guard.seconds(allowed.toNanos()) + " for " + calls + " calls";
    }
}
