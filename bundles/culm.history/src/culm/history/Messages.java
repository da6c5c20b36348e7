package culm.history;

import java.util.List;
import java.util.stream.Collectors;

import culm.design.compare.Difference;

/** Changes in a few words, for the note of a version. */
final class Messages {
    private static final int MOST_IN_TITLE = 3;
    private static final int LONGEST_TITLE = 100;

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

    /** Only the numbers, where they are what changed. */
    private static String brief(Difference d) {
        String before = number(d.before());
        String now = number(d.yours());
        return before.isEmpty() || now.isEmpty() || before.equals(now) ? words(d) : d.label() + " " + before + " \u2192 " + now;
    }

    private static String number(String value) {
        return value.matches("-?[0-9.]+( .*|,.*)?") ? value.split("[ ,]")[0] : "";
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
