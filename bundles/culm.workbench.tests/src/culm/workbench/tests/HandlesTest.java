package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.blank.rules.Verdict;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.graphs.Figure;

/** Marks moved by mouse and keys. */
class HandlesTest extends StudioTest {
    private static final String FILE = "trial-14.reed";

    @Test
    void aDragIsSeenWhileItGoesOnAndIsOneStep() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        assertEquals(Verdict.Sign.FITS, ui(() -> session(editor).shown().verdict().sign()));
        Point at = ui(() -> handle("wrapTop"));
        Canvas canvas = ui(() -> figure("Reed"));
        ui(() -> mouse(canvas, SWT.MouseDown, at.x, at.y));
        for (int moved = 5; moved <= 40; moved += 5) {
            int x = at.x - moved;
            ui(() -> mouse(canvas, SWT.MouseMove, x, at.y));
        }
        shown(editor);
        assertEquals(Verdict.Sign.DOES_NOT, ui(() -> session(editor).shown().verdict().sign()));
        assertTrue(ui(() -> session(editor).shown().findings().stream().anyMatch(f -> f.fix().isPresent())));
        assertFalse(ui(editor::isDirty), "the design itself is not changed before the drag ends");
        ui(() -> mouse(canvas, SWT.MouseUp, at.x - 40, at.y));
        shown(editor);
        assertTrue(ui(editor::isDirty));
        assertTrue(value(editor, Inputs.WRAP_TOP) < 45);

        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertEquals(before, ui(() -> session(editor).text()));
        assertFalse(ui(editor::isDirty));
        command("org.eclipse.ui.edit.redo");
        shown(editor);
        assertTrue(value(editor, Inputs.WRAP_TOP) < 45);
    }

    @Test
    void aDragIsSavedTakenBackToTheVerySameFileDoneAgainAndReadAgain() throws Exception {
        String before = text(FILE);
        DesignEditor editor = open(FILE);
        Canvas canvas = ui(() -> figure("Reed"));
        Point at = ui(() -> handle("fold"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseMove, at.x - 20, at.y);
            mouse(canvas, SWT.MouseUp, at.x - 20, at.y);
        });
        shown(editor);
        double dragged = value(editor, Inputs.TIE_LENGTH);
        assertTrue(dragged < 72);
        ui(() -> page().saveEditor(editor, false));
        String saved = text(FILE);
        assertNotEquals(before, saved);

        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertTrue(ui(editor::isDirty), "the file still holds the dragged one");
        ui(() -> page().saveEditor(editor, false));
        assertEquals(before, text(FILE));

        command("org.eclipse.ui.edit.redo");
        shown(editor);
        ui(() -> page().saveEditor(editor, false));
        assertEquals(saved, text(FILE));
        ui(() -> page().closeEditor(editor, false));
        assertEquals(dragged, value(open(FILE), Inputs.TIE_LENGTH), 1e-9);
    }

    @Test
    void whatAHandleDoesIsNamedInTheMenu() throws Exception {
        DesignEditor editor = open(FILE);
        Canvas canvas = ui(() -> figure("Reed"));
        Point at = ui(() -> handle("wrapTop"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseUp, at.x, at.y);
            key(canvas, SWT.ARROW_LEFT, 0);
        });
        shown(editor);
        assertEquals("top of the wrap 46.4\u2009mm", ui(() -> session(editor).undoLabel().orElseThrow()));
    }

    @Test
    void escapeGivesADragBack() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        String verdict = ui(() -> session(editor).shown().verdict().sentence());
        Point at = ui(() -> handle("fold"));
        Canvas canvas = ui(() -> figure("Reed"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseMove, at.x - 30, at.y);
        });
        shown(editor);
        assertNotEquals(verdict, ui(() -> session(editor).shown().verdict().sentence()));
        ui(() -> {
            key(canvas, SWT.ESC, 0);
            mouse(canvas, SWT.MouseUp, at.x - 30, at.y);
        });
        shown(editor);
        assertEquals(verdict, ui(() -> session(editor).shown().verdict().sentence()));
        assertEquals(before, ui(() -> session(editor).text()));
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void arrowKeysStepByTenthsAndWithShiftByHundredthsAsOneStep() throws Exception {
        DesignEditor editor = open(FILE);
        Canvas canvas = ui(() -> figure("Reed"));
        Point at = ui(() -> handle("wrapTop"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseUp, at.x, at.y);
            key(canvas, SWT.ARROW_LEFT, 0);
            key(canvas, SWT.ARROW_LEFT, 0);
            key(canvas, SWT.ARROW_RIGHT, SWT.SHIFT);
        });
        shown(editor);
        assertEquals(46.31, value(editor, Inputs.WRAP_TOP), 1e-9);
        command("org.eclipse.ui.edit.undo");
        assertEquals(46.5, value(editor, Inputs.WRAP_TOP), 1e-9);
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void escapeGivesStepsBack() throws Exception {
        DesignEditor editor = open(FILE);
        Canvas canvas = ui(() -> figure("Reed"));
        Point at = ui(() -> handle("fold"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseUp, at.x, at.y);
            key(canvas, SWT.ARROW_RIGHT, 0);
            key(canvas, SWT.ARROW_RIGHT, 0);
            key(canvas, SWT.ESC, 0);
        });
        assertEquals(72, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void movingTheStaplesTopCopiesTheLinkedStaple() throws Exception {
        DesignEditor editor = open(FILE);
        String parts = text("harbour-row.parts");
        Canvas canvas = ui(() -> figure("Reed"));
        Point at = ui(() -> handle("stapleTop"));
        ui(() -> {
            mouse(canvas, SWT.MouseDown, at.x, at.y);
            mouse(canvas, SWT.MouseMove, at.x - 10, at.y);
            mouse(canvas, SWT.MouseUp, at.x - 10, at.y);
        });
        shown(editor);
        assertTrue(value(editor, Inputs.STAPLE_LENGTH) < 47);
        ui(() -> page().saveEditor(editor, false));
        assertEquals(parts, text("harbour-row.parts"));
    }

    @Test
    void theSectionFollowsThePointerAndStaysWherePinned() throws Exception {
        DesignEditor editor = open(FILE);
        Canvas canvas = ui(() -> figure("Reed"));
        int y = ui(() -> canvas.getClientArea().height) / 8;
        ui(() -> mouse(canvas, SWT.MouseMove, 200, y));
        double first = ui(() -> editor.pointer().height().getAsDouble());
        ui(() -> {
            mouse(canvas, SWT.MouseDown, 200, y);
            mouse(canvas, SWT.MouseMove, 320, y);
        });
        assertEquals(first, ui(() -> editor.pointer().height().getAsDouble()), 1e-9);
        ui(() -> mouse(canvas, SWT.MouseDown, 320, y));
        assertNotEquals(first, ui(() -> editor.pointer().height().getAsDouble()), 0.5);
    }

    @Test
    void theReedKeepsItsPlaceWhileLittleChangesInADrag() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        Canvas canvas = ui(() -> figure("Reed"));
        Set<Integer> heights = new HashSet<>();
        for (int step = -40; step <= 40; step++) { // up to where the drawing needs least, and back
            double tie = 73 - 0.05 * Math.abs(step);
            ui(() -> session(editor).gesture().preview(Inputs.TIE_LENGTH, tie, "fold"));
            shown(editor);
            int height = ui(() -> canvas.getSize().y);
            assertTrue(ui(() -> ((Figure) canvas).onScreen().orElseThrow().height()) <= height + 0.5, "nothing of the drawing is cut off at a tie length of " + tie);
            heights.add(height);
        }
        assertTrue(heights.size() <= 2, "as it is, and once more room than before: " + heights);
    }
}
