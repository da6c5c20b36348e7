package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;

import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;

import culm.blank.rules.Verdict;
import culm.figures.Text;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.graphs.Figure;

/** What is missing for a design is told once, above all else. */
class MissingTypeTest extends StudioTest {
    private static final String GONE = "acme.staple.gone";

    private long above() throws Exception {
        return ui(() -> find(window().getShell(), Label.class).stream().filter(l -> l.getText().contains(GONE)).count());
    }

    @Test
    void aTypeThatNoPlugInBringsIsToldOnce() throws Exception {
        Files.writeString(folder.resolve("trial-14.reed"), text("trial-14.reed").replace("culm.staple.oval", GONE));
        Files.writeString(folder.resolve("harbour-row.parts"), text("harbour-row.parts").replace("culm.staple.oval", GONE));
        DesignEditor editor = open("trial-14.reed");
        shown(editor);
        assertEquals(1, above());
        ui(() -> {
            Verdict verdict = session(editor).shown().verdict();
            assertEquals(Verdict.Sign.DOES_NOT, verdict.sign());
            assertEquals("where the sides close cannot be told", verdict.sentence());
            assertFalse(session(editor).shown().findings().isEmpty());
            assertTrue(session(editor).shown().findings().stream().noneMatch(f -> f.text().contains(GONE)), session(editor).shown().findings().toString());
            for (Figure figure : editor.figures().stream().filter(f -> !f.title().equals("Gouge")).toList()) { // a graph alone on its place says why it is empty
                figure.onScreen().ifPresent(d -> assertTrue(d.flat().stream().noneMatch(i -> i instanceof Text t && t.text().contains("plug-in")), figure.title()));
            }
        });
    }

    @Test
    void aPartThatIsGoneIsToldOnce() throws Exception {
        Files.writeString(folder.resolve("trial-12.reed"), text("trial-12.reed").replace("#staple-47\"", "#staple-gone\""));
        DesignEditor editor = open("trial-12.reed");
        shown(editor);
        assertEquals("where the sides close cannot be told", ui(() -> session(editor).shown().verdict().sentence()));
        assertEquals(1, ui(() -> find(window().getShell(), Label.class).stream().filter(l -> l.getText().contains("staple-gone")).count()));
    }
}
