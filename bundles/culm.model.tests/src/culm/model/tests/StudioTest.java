package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Document;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem.Kind;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.model.studio.StudioIndex.Use;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A studio's list of what is in it. */
class StudioTest {
    private final ModelFiles files = new ModelFiles();

    @TempDir
    private Path root;

    @BeforeEach
    void aStudio() throws IOException {
        for (String sample : new String[] {"full.parts", "full.batch", "full.log"}) {
            Files.writeString(root.resolve(sample.replace("full", "class")), Samples.text(sample));
        }
        Files.writeString(Files.createDirectories(root.resolve("term 1")).resolve("second.reed"),
                "<reed format=\"1\" id=\"second\"><name>Zweites R\u00f6hrchen</name><staple link=\"../class.parts#staple-47\"/></reed>");
        Files.writeString(root.resolve("full.reed"), Samples.text("full.reed"));
        Files.writeString(root.resolve("broken.reed"), "<reed");
        Files.writeString(Files.createDirectories(root.resolve(".removed")).resolve("old.reed"), "<reed format=\"1\"/>");
        Files.writeString(root.resolve("notes.txt"), "no file of the studio");
        Files.writeString(root.resolve("full.reed.bak"), Samples.text("full.reed"));
    }

    @Test
    void everythingInItIsListed() {
        StudioIndex index = Studio.at(root, files).index();
        assertEquals(List.of("broken.reed", "class.batch", "class.log", "class.parts", "full.reed", "term 1/second.reed"),
                index.entries().stream().map(StudioEntry::shown).toList());
        assertEquals(List.of("", "Class blank & first try", "Zweites R\u00f6hrchen"),
                index.of(FileKind.DESIGN).stream().map(StudioEntry::name).toList());
        assertEquals("broken.reed", index.of(FileKind.DESIGN).get(0).title());
        assertEquals(List.of("staple-47", "gouge-60", "shape-7", "ff"),
                index.parts().stream().map(held -> held.part().id()).toList());
        assertEquals(List.of(Kind.NOT_XML), index.problems().stream().map(problem -> problem.kind()).toList());
    }

    @Test
    void filesStandInTheOrderOfTheirNumbers() throws IOException {
        for (String name : new String[] {"trial-8", "trial-14", "trial-10", "trial-9"}) {
            Files.writeString(root.resolve(name + ".reed"), "<reed format=\"1\"><name>" + name + "</name><staple link=\"class.parts#staple-47\"/></reed>");
        }
        StudioIndex index = Studio.at(root, files).index();
        List<String> numbered = List.of("trial-8.reed", "trial-9.reed", "trial-10.reed", "trial-14.reed");
        assertEquals(numbered, index.find("trial").stream().map(StudioEntry::shown).toList());
        assertEquals(numbered, index.usersOf(root.resolve("class.parts"), "staple-47").stream().map(use -> use.design().shown()).skip(1).toList());
    }

    @Test
    void whoUsesAPart() {
        StudioIndex index = Studio.at(root, files).index();
        List<Use> users = index.usersOf(root.resolve("class.parts"), "staple-47");
        assertEquals(List.of("term 1/second.reed"), users.stream().map(use -> use.design().shown()).toList());
        assertEquals("staple", users.get(0).part().kind());
        assertEquals(List.of("full.reed"),
                index.usersOf(root.resolve("class.parts"), "gouge-60").stream().map(use -> use.design().shown()).toList());
        assertTrue(index.usersOf(root.resolve("class.parts"), "ff").isEmpty());
    }

    @Test
    void foundByAPieceOfTheName() {
        StudioIndex index = Studio.at(root, files).index();
        assertEquals(List.of("term 1/second.reed"), index.find(" R\u00d6HR ").stream().map(StudioEntry::shown).toList());
        assertEquals(List.of("class.batch", "class.log", "class.parts", "full.reed"), index.find("class").stream().map(StudioEntry::shown).toList());
        assertEquals(List.of("staple-47"), index.findParts("first of may").stream().map(held -> held.part().id()).toList());
    }

    @Test
    void onlyWhatChangedIsReadAgain() throws IOException {
        Studio studio = Studio.at(root, files);
        StudioIndex before = studio.index();
        Files.writeString(root.resolve("full.reed"), "<reed format=\"1\"><name>new</name></reed>");
        Files.delete(root.resolve("broken.reed"));
        StudioIndex after = studio.index();
        assertSame(before.of(FileKind.PARTS).get(0), after.of(FileKind.PARTS).get(0));
        assertNotSame(before.of(FileKind.DESIGN).get(1), after.of(FileKind.DESIGN).get(0));
        assertEquals("new", after.of(FileKind.DESIGN).get(0).name());
        assertEquals(2, after.of(FileKind.DESIGN).size());
    }

    @Test
    void everyListedFileHoldsWhatItsNameSays() throws Exception {
        for (StudioEntry entry : Studio.at(root, files).index().entries()) {
            if (entry.problem().isEmpty()) {
                Loaded<? extends Document> loaded = files.load(entry.file(), entry.kind().type());
                assertTrue(entry.kind().type().isInstance(loaded.document()));
                assertFalse(files.text(loaded.document()).contains(root.toString()), "no path of this machine");
            }
        }
    }

    @Test
    void aFolderThatIsNotThereIsAnEmptyStudioWithAReason() {
        StudioIndex index = Studio.at(root.resolve("none"), files).index();
        assertEquals(1, index.problems().size());
        assertEquals(Kind.NOT_ACCESSIBLE, index.problems().get(0).kind());
    }
}
