package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.files.Claims;
import culm.model.files.Claims.Holder;
import culm.model.files.ContentStamp;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.files.Recovery;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving: beside, flushed, moved over in one step; one backup; nothing of someone else's overwritten. */
class SavingTest {
    private final ModelFiles files = new ModelFiles();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void aDesign() throws IOException {
        file = Files.writeString(folder.resolve("a.reed"), Samples.text("full.reed"));
    }

    @Test
    void whatWasThereBeforeIsTheBackup() throws Exception {
        Loaded<Design> loaded = files.load(file, Design.class);
        loaded.document().setName("second");
        ContentStamp second = files.save(loaded.document(), file, Optional.of(loaded.stamp()));
        assertEquals(Samples.text("full.reed"), Files.readString(backup()));
        assertEquals("second", files.load(file, Design.class).document().getName());
        loaded.document().setName("third");
        files.save(loaded.document(), file, Optional.of(second));
        assertEquals("second", files.load(backup(), Design.class).document().getName());
        assertEquals(List.of(".culm-lock", "a.reed", "a.reed.bak"), names());
    }

    @Test
    void savingTheSameAgainTouchesNothing() throws Exception {
        Loaded<Design> loaded = files.load(file, Design.class);
        var written = Files.getLastModifiedTime(file);
        files.save(loaded.document(), file, Optional.of(loaded.stamp()));
        assertEquals(written, Files.getLastModifiedTime(file));
        assertFalse(Files.exists(backup()));
    }

    @Test
    void whatSomeoneElseChangedIsNotOverwritten() throws Exception {
        Loaded<Design> loaded = files.load(file, Design.class);
        Files.writeString(file, "<reed format=\"1\" id=\"theirs\"/>");
        assertRefused(loaded, "it was changed by someone else since it was opened; nothing was saved");
        assertEquals("<reed format=\"1\" id=\"theirs\"/>", Files.readString(file));
        Files.delete(file);
        assertRefused(loaded, "it is no longer there; nothing was saved");
        assertFalse(Files.exists(file));
    }

    @Test
    void aNewFileTakesNoOthersName() throws Exception {
        Design design = files.load(file, Design.class).document();
        assertEquals(Kind.CHANGED_ON_DISK, assertThrows(FileProblemException.class,
                () -> files.save(design, file, Optional.empty())).problem().kind());
        Path other = folder.resolve("b.reed");
        files.save(design, other, Optional.empty());
        assertEquals(Samples.text("full.reed"), Files.readString(other));
    }

    @Test
    void aFolderThatIsNotThere() throws Exception {
        Loaded<Design> loaded = files.load(file, Design.class);
        FileProblemException e = assertThrows(FileProblemException.class,
                () -> files.save(loaded.document(), folder.resolve("none/a.reed"), Optional.empty()));
        assertEquals(Kind.NOT_ACCESSIBLE, e.problem().kind());
    }

    @Test
    void rightsAreKept() throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        SafeFile.overwrite(file, new byte[] {1, 2, 3});
        assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void aLinkOfTheFileSystemStaysOne() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("l.reed"), file);
        SafeFile.overwrite(link, new byte[] {1});
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(new byte[] {1}, Files.readAllBytes(file));
    }

    @Test
    void whatADeadProgramLeftIsSweptUp() throws Exception {
        Path left = Files.writeString(folder.resolve(".a.reed-x" + SafeFile.HALF_WRITTEN), "half");
        Path others = Files.writeString(folder.resolve(".b.reed-x" + SafeFile.HALF_WRITTEN), "half");
        SafeFile.overwrite(file, new byte[] {1});
        assertFalse(Files.exists(left));
        assertTrue(Files.exists(others));
    }

    @Test
    void whatSavingLeavesIsNoFileOfTheStudio() {
        assertTrue(FileKind.of(file).isPresent());
        for (String aside : List.of("a.reed.bak", ".a.reed-1.part-tmp", ".a.reed.open", ".a.reed.unsaved", ".culm-lock")) {
            assertTrue(FileKind.of(folder.resolve(aside)).isEmpty(), aside);
        }
    }

    @Test
    void theSecondToOpenIsToldWhoWasFirst() throws Exception {
        Instant now = Instant.parse("2026-11-25T08:00:00Z");
        try (Claims claims = new Claims()) {
            assertEquals(Optional.empty(), claims.claim(file, "student\nA", now));
            assertEquals(Optional.of(new Holder("student A", "2026-11-25T08:00:00Z")), claims.claim(file, "B", now));
            assertEquals(List.of("student A", "2026-11-25T08:00:00Z"), OtherProgram.claim(file, "B"));
            claims.release(file);
            assertEquals(List.of("claimed"), OtherProgram.claim(file, "B"));
            assertEquals(Optional.empty(), claims.claim(file, "A", now), "the other program has ended");
        }
        assertEquals(List.of("a.reed"), names());
    }

    @Test
    void unsavedWorkIsFoundAgain() throws Exception {
        assertTrue(Recovery.find(file).isEmpty());
        byte[] work = Samples.bytes("<reed format=\"1\" id=\"work\"/>\n");
        Recovery.keep(file, work);
        Recovery.keep(file, work);
        assertArrayEquals(work, Recovery.find(file).orElseThrow().content());
        SafeFile.overwrite(file, work);
        assertTrue(Recovery.find(file).isEmpty(), "it was saved since");
        Recovery.drop(file);
        assertEquals(List.of(".culm-lock", "a.reed", "a.reed.bak"), names());
    }

    private void assertRefused(Loaded<Design> loaded, String sentence) {
        loaded.document().setName("mine");
        FileProblemException e = assertThrows(FileProblemException.class,
                () -> files.save(loaded.document(), file, Optional.of(loaded.stamp())));
        assertEquals(Kind.CHANGED_ON_DISK, e.problem().kind());
        assertEquals(sentence, e.problem().sentence());
    }

    private Path backup() {
        return folder.resolve("a.reed.bak");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }
}
