package culm.cli.history;

import java.io.PrintStream;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import culm.design.compare.Difference;
import culm.history.FileChange;
import culm.history.Meeting;
import culm.history.Received;
import culm.history.Version;

/** Versions and changes for a person. */
final class HistoryText {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);
    private final PrintStream out;

    HistoryText(PrintStream out) {
        this.out = out;
    }

    void versions(List<Version> versions) {
        versions.forEach(v -> out.printf("%s  %s UTC  %-16s %s%n", v.shortId(), WHEN.format(v.when()), v.who(), v.title(WHEN)));
    }

    void kept(Optional<Version> version) {
        out.println(version.map(v -> "Kept as " + v.shortId() + ": " + v.title()).orElse("Nothing changed."));
    }

    void changes(List<FileChange> changes) {
        if (changes.isEmpty()) {
            out.println("Nothing changed.");
        }
        for (FileChange change : changes) {
            out.println(change.file() + switch (change.kind()) {
                case ADDED -> " is new";
                case REMOVED -> " is gone";
                case CHANGED -> change.differences().isEmpty() ? " changed" : "";
            });
            for (Difference d : change.differences()) {
                out.println("  " + d.label() + ": " + said(d.before()) + " \u2192 " + said(d.yours()));
            }
        }
    }

    void received(Received received) {
        switch (received.outcome()) {
            case NOTHING_NEW -> out.println("Nothing new.");
            case TAKEN_OVER -> {
                changes(received.changes());
                out.println("Taken over.");
            }
            case CHOICE_NEEDED -> {
                received.meetings().forEach(this::meeting);
                out.println("Both changed this; nothing was taken over yet. Choose with --rest yours or theirs, or one by one with --choose.");
            }
        }
    }

    private void meeting(Meeting meeting) {
        for (Difference d : meeting.conflicts()) {
            out.println(meeting.file() + (d.path().isEmpty() ? "" : ", " + d.label()));
            out.println("  before " + said(d.before()) + ", yours " + said(d.yours()) + ", theirs " + said(d.theirs()));
            out.println("  --choose " + meeting.file() + ":" + d.path() + "=yours");
        }
    }

    private static String said(String value) {
        return value.isEmpty() ? "none" : value.replaceAll("\\s+", " ");
    }
}
