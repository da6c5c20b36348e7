package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.random.RandomGenerator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.blank.rules.Rules;
import culm.design.edit.Edit;
import culm.design.edit.Edits;
import culm.design.parts.PartAddress;
import culm.design.parts.Replacement;
import culm.model.Design;
import culm.model.ModelFactory;
import culm.model.Part;
import culm.model.PartsFile;
import culm.model.studio.Studio;

/** Changes of a whole document as one command: another content, parts added and removed, numbers found. */
class WholeDocumentTest {
    @TempDir
    private Path folder;

    private static Design read(String text) throws Exception {
        return Studios.FILES.read(text.getBytes(StandardCharsets.UTF_8), "a.reed", Design.class).document();
    }

    private static PartsFile parts() throws Exception {
        return Studios.FILES.load(Studios.file("harbour-row.parts"), "harbour-row.parts", PartsFile.class).document();
    }

    private static String text(culm.model.Document document) {
        return Studios.FILES.text(document);
    }

    /** What is not known goes along, where it stood; the other document is left as it is. */
    @ParameterizedTest
    @CsvSource({ "trial-12.reed, horn-3.reed", "trial-14.reed, trial-13-two-gouges.reed", "trial-11-measured-staple.reed, trial-14.reed" })
    void oneBecomesTheOtherAndBack(String one, String other) throws Exception {
        String first = Files.readString(Studios.file(one)).replace("<tie>", "<engraved/>\n  <!-- by hand -->\n  <tie>");
        String second = Files.readString(Studios.file(other)).replace("<tie>", "<tuned to=\"442\"/>\n  <tie>");
        Design design = read(first);
        Design target = read(second);
        first = text(design);
        second = text(target);
        assertTrue(second.contains("tuned"));
        Edit edit = Edits.become(design, target, "put together");
        edit.execute();
        assertEquals(second, text(design));
        assertEquals(second, text(target));
        edit.undo();
        assertEquals(first, text(design));
        edit.redo();
        assertEquals(second, text(design));
    }

    @Test
    void onlyItsOwnKind() {
        assertThrows(IllegalArgumentException.class, () -> Edits.become(ModelFactory.eINSTANCE.createDesign(), ModelFactory.eINSTANCE.createPartsFile(), ""));
    }

    @Test
    void partsAreAddedAndRemoved() throws Exception {
        PartsFile file = parts();
        String before = text(file);
        Part first = file.getParts().get(0);
        Edit remove = Edits.removePart(file, first);
        remove.execute();
        assertTrue(file.getParts().stream().noneMatch(p -> p == first));
        remove.undo();
        assertEquals(before, text(file));
        Part made = ModelFactory.eINSTANCE.createThreadPart();
        made.setId("new");
        Edit add = Edits.addPart(file, made);
        add.execute();
        assertEquals("new", file.getParts().get(file.getParts().size() - 1).getId());
        add.undo();
        assertEquals(before, text(file));
    }

    @Test
    void aNumberIsFoundWhereItStands() throws Exception {
        Part staple = parts().getParts().get(0);
        Edits edits = Edits.of(staple, RandomGenerator.getDefault());
        assertEquals(47, edits.quantity("staple.length").orElseThrow().getValue(), 0);
        assertEquals(3.4, edits.quantity("staple.topWide").orElseThrow().getValue(), 0);
        assertTrue(edits.quantity("staple.checkTurns").isEmpty());
    }

    @Test
    void whatAReplacementWouldWriteIsWhatItWrites() throws Exception {
        for (String name : List.of("trial-12.reed", "harbour-row.parts")) {
            Files.copy(Studios.file(name), folder.resolve(name));
        }
        Path parts = folder.resolve("harbour-row.parts");
        Path design = folder.resolve("trial-12.reed");
        Studio studio = Studio.at(folder, Studios.FILES);
        Replacement replacement = new Replacement(studio, Studios.BRIDGE, Rules.load(), new PartAddress(parts, "staple-47"), new PartAddress(parts, "staple-46"));
        assertEquals(List.of(design), replacement.users(studio.index()));
        byte[] content = replacement.content(design);
        assertTrue(Files.readString(design).contains("#staple-47"), "nothing is written");
        replacement.apply(design);
        assertArrayEquals(content, Files.readAllBytes(design));
    }
}
