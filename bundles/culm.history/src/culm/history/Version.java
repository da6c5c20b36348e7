package culm.history;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private static final String BACK = "Back to the version of ";
    private static final Pattern WENT_BACK = Pattern.compile(BACK + "(\\d{4}-\\d\\d-\\d\\dT[\\d:.]+Z)");

    /** What is said of going back to a version; when that was stands in it for every zone alike. */
    static String backTo(Version version) {
        return BACK + version.when() + ": " + version.title();
    }

    /** {@return the note with the time of a version that was gone back to as its reader writes times} @param time how a time is written there */
    public String note(DateTimeFormatter time) {
        return WENT_BACK.matcher(note).replaceAll(m -> Matcher.quoteReplacement(BACK + time.format(Instant.parse(m.group(1)))));
    }

    /** {@return the first line of that} @param time how a time is written there */
    public String title(DateTimeFormatter time) {
        return note(time).lines().findFirst().orElse("");
    }

    /** The beginning of its name, enough to tell it from others. */
    public String shortId() {
        return id.substring(0, SHORT);
    }

    /** The note's first line. */
    public String title() {
        return note.lines().findFirst().orElse("");
    }
}
