package culm.history;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.design.compare.Difference;
import culm.geometry.profile.Profiles;

/** A studio's versions: kept, told in words of the trade, gone back to; off until it is begun. */
class StudioHistoryTest {
    private static final Profiles PROFILES = Profiles.load();

    @TempDir
    Path folder;
    private Path design;

    @BeforeEach
    void aStudio() throws Exception {
        Studios.copy(folder);
        design = folder.resolve("trial-12.reed");
    }

    @Test
    void isOffUntilItIsBegun() throws Exception {
        assertTrue(StudioHistory.open(folder, PROFILES).isEmpty());
        assertFalse(Files.exists(folder.resolve(".git")));
        StudioHistory.begin(folder, PROFILES, "Student A").close();
        try (StudioHistory history = StudioHistory.open(folder, PROFILES).orElseThrow()) {
            assertEquals(1, history.versions().size());
            assertEquals("Student A", history.versions().get(0).who());
            assertEquals(List.of(), history.unkept());
        }
        assertThrows(HistoryException.class, () -> StudioHistory.begin(folder, PROFILES, "Student A"));
    }

    @Test
    void tellsWhatChangedInWordsOfTheTrade() throws Exception {
        try (StudioHistory history = StudioHistory.begin(folder, PROFILES, "A")) {
            Version first = history.versions().get(0);
            Studios.replace(design, "<length value=\"72\"", "<length value=\"71.5\"");
            Studios.replace(folder.resolve("harbour-row.parts"), "fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.15\"");
            Files.writeString(folder.resolve("trial-20.reed"), Files.readString(design).replace("trial 12", "trial 20"));
            Files.delete(folder.resolve("trial-9-open.reed"));
            Files.writeString(folder.resolve("trial-12.reed.bak"), "a backup is no part of the history");
            List<FileChange> changes = history.unkept();
            assertEquals(List.of("harbour-row.parts CHANGED", "trial-12.reed CHANGED", "trial-20.reed ADDED", "trial-9-open.reed REMOVED"),
                    changes.stream().map(c -> c.file() + " " + c.kind()).sorted().toList());
            Difference width = changes.stream().filter(c -> c.file().equals("harbour-row.parts")).findFirst().orElseThrow().differences().get(0);
            assertTrue(width.label().endsWith("width at 22 mm from the fold"), width.label());
            assertEquals(List.of("5.1 mm", "5.15 mm"), List.of(width.before(), width.yours()));
            Version kept = history.keep("").orElseThrow();
            assertTrue(kept.note().contains("tie length 72 \u00b1 0.2 mm, measured \u2192 71.5 \u00b1 0.2 mm, measured"), kept.note());
            assertTrue(kept.title().contains("width at 22 mm from the fold 5.1 \u2192 5.15 mm"), kept.title());
            assertTrue(kept.note().contains("trial-9-open.reed is gone"), kept.note());
            assertTrue(history.keep("").isEmpty(), "nothing changed since");
            assertEquals(4, history.changes(first, kept).size());
            assertEquals(List.of(kept, first), history.versions(design));
            assertEquals(first, history.version(first.shortId()));
        }
    }

    @Test
    void goesBackAndLosesNothing() throws Exception {
        byte[] original = Files.readAllBytes(design);
        try (StudioHistory history = StudioHistory.begin(folder, PROFILES, "A")) {
            Version first = history.versions().get(0);
            Studios.replace(design, "<length value=\"72\"", "<length value=\"71.5\"");
            byte[] changed = Files.readAllBytes(design);
            Files.delete(folder.resolve("horn-3.reed"));
            history.back(first, List.of(design));
            assertArrayEquals(original, Files.readAllBytes(design));
            assertFalse(Files.exists(folder.resolve("horn-3.reed")), "only what was asked for");
            Version before = history.versions().get(1);
            assertArrayEquals(changed, history.content(before, design).orElseThrow(), "what was not kept was kept first");
            history.back(first, List.of());
            assertTrue(Files.exists(folder.resolve("horn-3.reed")));
            history.back(before, List.of());
            assertArrayEquals(changed, Files.readAllBytes(design));
        }
    }

    @Test
    void wrongNamesAreToldInASentence() throws Exception {
        try (StudioHistory history = StudioHistory.begin(folder, PROFILES, "A")) {
            assertEquals("There is no version \"abc123\".", assertThrows(HistoryException.class, () -> history.version("abc123")).getMessage());
            assertTrue(assertThrows(HistoryException.class, () -> history.send(Secrets.NONE)).getMessage().contains("not shared"));
        }
    }
}
