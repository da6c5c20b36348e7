package culm.history;

import java.util.List;

/**
 * What came of receiving.
 *
 * @param outcome  what was done
 * @param changes  what is new in the studio's files; empty unless something was taken over
 * @param meetings files that both changed; when one of them has a conflict, nothing was taken over yet
 */
public record Received(Outcome outcome, List<FileChange> changes, List<Meeting> meetings) {
    /** What may come of it. */
    public enum Outcome {
        /** There was nothing new. */
        NOTHING_NEW,
        /** The others' changes are now in the studio. */
        TAKEN_OVER,
        /** Somebody has to choose; nothing was changed. */
        CHOICE_NEEDED
    }
}
