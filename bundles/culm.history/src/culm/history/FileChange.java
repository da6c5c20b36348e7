package culm.history;

import java.util.List;

import culm.design.compare.Difference;

/**
 * What happened to one file between two versions.
 *
 * @param file        relative to the studio, with {@code /}
 * @param kind        what
 * @param name        what the design or parts file is called; empty when it has no name or is no such file
 * @param differences for a changed file of the studio: each value, what was before and, as yours, what is now; empty for other files
 */
public record FileChange(String file, Kind kind, String name, List<Difference> differences) {
    /** What may happen to a file. */
    public enum Kind {
        /** It is new. */
        ADDED,
        /** It is gone. */
        REMOVED,
        /** It holds something else. */
        CHANGED
    }
}
