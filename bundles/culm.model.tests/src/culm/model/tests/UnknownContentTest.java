package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.Row;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** What this program does not know stays in the file, where it was. */
class UnknownContentTest {
    private final ModelFiles files = new ModelFiles();

    @Test
    void elementsAttributesAndCommentsStay() throws Exception {
        String text = Samples.text("unknown.reed");
        assertEquals(text, files.text(read(text)));
        assertEquals(text, files.text(EcoreUtil.copy(read(text))));
    }

    @Test
    void layoutByHandLosesNothing() throws Exception {
        String text = Samples.text("hand.reed");
        String saved = files.text(read(text));
        assertEquals(Samples.text("hand-saved.reed"), saved);
        assertEquals(saved, files.text(read(saved)));
    }

    @Test
    void whatStoodByARowGoesWithItAndStaysWhenItIsTakenOut() throws Exception {
        String text = """
                <?xml version="1.0" encoding="UTF-8"?>
                <reed format="1">
                  <shape>
                    <inside name="places">
                      <row id="a" width="7"/>
                      <!-- b was read twice -->
                      <row id="b" width="6"/>
                      <row id="c" width="5"/>
                    </inside>
                  </shape>
                </reed>
                """;
        Design design = read(text);
        var rows = design.getShape().getInside().getRows();
        rows.move(0, 1);
        assertTrue(files.text(design).contains("""
                    <inside name="places">
                      <!-- b was read twice -->
                      <row id="b" width="6"/>
                """));
        Row row = rows.remove(0);
        assertTrue(files.text(design).contains("""
                      <row id="c" width="5"/>
                      <!-- b was read twice -->
                """));
        rows.add(1, row);
        assertEquals(text, files.text(design));
    }

    @Test
    void aNewerFormatOpensToLookAt() throws Exception {
        Loaded<Design> loaded = files.read(Samples.bytes("""
                <reed format="7" id="later"><tie bent="yes"><length value="72"/><angle value="3"/></tie></reed>"""),
                "later.reed", Design.class);
        assertEquals(72, loaded.document().getTie().getLength().getValue());
        assertEquals(7, loaded.format());
        assertEquals(Kind.NEWER_FORMAT, loaded.readOnly().orElseThrow().kind());
        assertEquals("later.reed: it was written in format 7, newer than this program's 1; it opens to look at, "
                + "but is not saved", loaded.readOnly().orElseThrow().message());
    }

    @Test
    void whatXmlCannotHoldIsMarkedAndTheFileStaysReadable() throws Exception {
        Design design = read("<reed format=\"1\"/>");
        design.setNotes("a\u0000b\u000bc\ud800d \ud83c\udfbc\r\n\te");
        String text = files.text(design);
        Design again = read(text);
        assertEquals("a\ufffdb\ufffdc\ufffdd \ud83c\udfbc\r\n\te", again.getNotes());
        assertEquals(text, files.text(again));
    }

    private Design read(String text) throws FileProblemException {
        return files.read(Samples.bytes(text), "a.reed", Design.class).document();
    }
}
