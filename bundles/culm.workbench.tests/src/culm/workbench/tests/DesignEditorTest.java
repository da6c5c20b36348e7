package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;

/** The whole way through the editor for a design: open, change, undo, redo, save, open again. */
class DesignEditorTest extends StudioTest {
    private static final String FILE = "trial-12.reed";
    private static final String TIE = "tie.length";

    @Test
    void changeUndoRedoSaveReopen() throws Exception {
        String before = text(FILE);
        DesignEditor editor = open(FILE);
        String verdict = ui(() -> session(editor).shown().verdict().sentence());
        assertFalse(ui(editor::isDirty));

        type(editor, TIE, "71,2");
        assertTrue(ui(editor::isDirty));
        assertNotEquals(verdict, ui(() -> session(editor).shown().verdict().sentence()));
        assertEquals("71.2\u2009mm", ui(() -> field(editor, TIE).getText()));

        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertFalse(ui(editor::isDirty));
        assertEquals(before, ui(() -> session(editor).text()));
        assertEquals(verdict, ui(() -> session(editor).shown().verdict().sentence()));

        command("org.eclipse.ui.edit.redo");
        shown(editor);
        String changed = ui(() -> session(editor).text());
        ui(() -> page().saveEditor(editor, false));
        assertFalse(ui(editor::isDirty));
        assertEquals(changed, text(FILE));
        ui(() -> page().closeEditor(editor, false));
        DesignEditor again = open(FILE);
        assertEquals("71.2\u2009mm", ui(() -> field(again, TIE).getText()));
    }

    @Test
    void whatIsNoNumberIsRefusedAndNothingChanges() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        type(editor, TIE, "seventy");
        type(editor, TIE, "1e5");
        assertEquals(before, ui(() -> session(editor).text()));
        assertFalse(ui(editor::isDirty));
    }
}
