package culm.history;

import java.time.Instant;

/**
 * A kept version of a studio.
 *
 * @param id   its full name in the repository
 * @param who  who kept it
 * @param when when
 * @param note what was said about it, without the line break at its end
 */
public record Version(String id, String who, Instant when, String note) {
    private static final int SHORT = 8;

    /** The beginning of its name, enough to tell it from others. */
    public String shortId() {
        return id.substring(0, SHORT);
    }

    /** The note's first line. */
    public String title() {
        return note.lines().findFirst().orElse("");
    }
}
