package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.files.Formats;
import culm.model.files.Loaded;
import culm.model.files.Migration;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.xml.XmlNode;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Older files are brought to today's format one step after the other. The formats here are made up for the test. */
class MigrationTest {
    private final ModelFiles files = new ModelFiles(new Formats(3, List.of(new TieGetsItsElement(), new StemIsLength())));

    /** From 1 to 2: the tie length stood in the root. */
    private static final class TieGetsItsElement implements Migration {
        @Override
        public int from() {
            return 1;
        }

        @Override
        public void apply(XmlNode root) {
            for (XmlNode old : List.copyOf(root.children())) {
                if (old.name().equals("tieStem")) {
                    XmlNode tie = XmlNode.element("tie", old.line());
                    old.rename("stem");
                    root.remove(old);
                    tie.add(old);
                    root.add(tie);
                }
            }
        }
    }

    /** From 2 to 3: the tie's stem became its length. */
    private static final class StemIsLength implements Migration {
        @Override
        public int from() {
            return 2;
        }

        @Override
        public void apply(XmlNode root) {
            root.children().stream().filter(node -> node.name().equals("tie")).flatMap(tie -> tie.children().stream())
                    .filter(node -> node.name().equals("stem")).forEach(node -> node.rename("length"));
        }
    }

    @Test
    void eachStepIsTaken() throws Exception {
        Loaded<Design> loaded = read("""
                <reed format="1">
                  <tieStem value="72"/>
                </reed>""");
        assertEquals(1, loaded.format());
        assertTrue(loaded.readOnly().isEmpty());
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <reed format="3">
                  <tie>
                    <length value="72"/>
                  </tie>
                </reed>
                """, files.text(loaded.document()));
    }

    @Test
    void theLineOfAnErrorIsThatOfTheFile() {
        var e = assertThrows(FileProblemException.class, () -> read("<reed format=\"1\">\n\n<tieStem value=\"x\"/></reed>"));
        assertEquals(3, e.problem().line());
    }

    @Test
    void onlyTheStepsAfterItsVersion() throws Exception {
        assertEquals(71, read("<reed format=\"2\"><tie><stem value=\"71\"/></tie></reed>").document().getTie().getLength()
                .getValue());
        assertTrue(read("<reed format=\"4\"/>").readOnly().isPresent());
    }

    @Test
    void tooOldIsRefused() {
        assertEquals(Kind.BAD_FORMAT,
                assertThrows(FileProblemException.class, () -> read("<reed format=\"0\"/>")).problem().kind());
    }

    @Test
    void aGapInTheStepsIsNoticed() {
        var first = List.of(new TieGetsItsElement());
        assertThrows(IllegalArgumentException.class, () -> new Formats(3, first));
        var twice = List.of(new StemIsLength(), new StemIsLength());
        assertThrows(IllegalArgumentException.class, () -> new Formats(3, twice));
    }

    private Loaded<Design> read(String text) throws FileProblemException {
        return files.read(Samples.bytes(text), "old.reed", Design.class);
    }
}
