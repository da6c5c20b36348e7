package culm.history;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import culm.design.compare.Difference;

/** Changes in a few words, for the note of a version. */
final class Messages {
    private static final int MOST_IN_TITLE = 3;
    private static final int LONGEST_TITLE = 100;
    /** A number, its give or take, the unit, and how it is known. */
    private static final Pattern NUMBER = Pattern.compile("(-?[0-9.]+)(?: \u00b1 [0-9.]+)?( [^ ,]+)?(?:,.*)?");

    private Messages() {
    }

    /** A title, and below it each change on a line of its own. */
    static String of(List<FileChange> changes) {
        String title = changes.stream().limit(MOST_IN_TITLE).map(Messages::title).collect(Collectors.joining("; "))
                + (changes.size() > MOST_IN_TITLE ? "; and " + (changes.size() - MOST_IN_TITLE) + " more" : "");
        String shortened = title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE - 1) + "\u2026";
        return shortened + "\n\n" + changes.stream().map(Messages::lines).collect(Collectors.joining("\n")) + "\n";
    }

    private static String title(FileChange change) {
        String name = change.name().isEmpty() ? change.file() : change.name();
        return switch (change.kind()) {
            case ADDED -> name + " is new";
            case REMOVED -> name + " is gone";
            case CHANGED -> name + (change.differences().isEmpty() ? " changed" : ": " + change.differences().stream().limit(MOST_IN_TITLE).map(Messages::brief)
                    .collect(Collectors.joining(", ")));
        };
    }

    /** Only the numbers with their unit, where they are what changed. */
    private static String brief(Difference d) {
        Matcher before = NUMBER.matcher(d.before());
        Matcher now = NUMBER.matcher(d.yours());
        return before.matches() && now.matches() && !before.group(1).equals(now.group(1))
                ? d.label() + " " + before.group(1) + " \u2192 " + now.group(1) + Objects.requireNonNullElse(now.group(2), "") : words(d);
    }

    private static String lines(FileChange change) {
        return switch (change.kind()) {
            case ADDED -> change.file() + " is new";
            case REMOVED -> change.file() + " is gone";
            case CHANGED -> change.file() + change.differences().stream().map(d -> "\n  " + words(d)).collect(Collectors.joining());
        };
    }

    /** {@code tie length 72 -> 71.5}; what is long or has lines is only named. */
    static String words(Difference d) {
        String before = d.before().isEmpty() ? "none" : d.before();
        String now = d.yours().isEmpty() ? "none" : d.yours();
        boolean brief = before.length() + now.length() < 60 && !before.contains("\n") && !now.contains("\n");
        return brief ? d.label() + " " + before + " \u2192 " + now : d.label() + " changed";
    }
}
