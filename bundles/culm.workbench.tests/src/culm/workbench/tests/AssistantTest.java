package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.ScrollPage;

/** The assistant for a new design, and a fit to a blank that works, from end to end. */
class AssistantTest extends StudioTest {

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().isPresent());
    }

    private DesignEditor active() throws Exception {
        until("the new design is open", () -> page().getActiveEditor() instanceof DesignEditor);
        DesignEditor editor = ui(() -> (DesignEditor) page().getActiveEditor());
        shown(editor);
        return editor;
    }

    @Test
    void fromACaliperAndAMandrel() throws Exception {
        Shell dialog = dialog("culm.studio.newDesign", "New design");
        fill(dialog, "name", "Class blank 7");
        press(dialog, "a caliper and a mandrel alone");
        keepPicture("new-design");
        press(dialog, "Next >");
        ui(() -> {
            assertEquals(Inputs.STAPLE_LENGTH, display().getFocusControl().getData("culm.ask"), "the first number can be typed at once");
            assertTrue(dialog.getSize().y <= dialog.getMonitor().getClientArea().height - 40, "the window's frame fits on the screen too: " + dialog.getSize());
        });
        fill(dialog, Inputs.STAPLE_LENGTH, "46,1");
        fill(dialog, "staple.topWide", "3.42");
        fill(dialog, Inputs.TIE_LENGTH, "71");
        keepPicture("new-design-caliper");
        ui(() -> {
            ScrolledComposite fields = find(dialog, ScrolledComposite.class).stream().filter(ScrolledComposite::isVisible).findFirst().orElseThrow();
            assertTrue(fields.getContent().getSize().y <= fields.getClientArea().height || (fields.getScrollbarsMode() & SWT.SCROLLBAR_OVERLAY) == 0, "no row is cut with no sign of more");
        });
        press(dialog, "Finish");
        DesignEditor editor = active();
        Blank blank = ui(() -> session(editor).blank().orElseThrow().blank());
        assertEquals(46.1, blank.number(Inputs.STAPLE_LENGTH), 1e-9);
        assertTrue(blank.tolerance(Inputs.STAPLE_LENGTH).measured());
        assertEquals(71, blank.number(Inputs.TIE_LENGTH), 1e-9);
        assertFalse(blank.tolerance("staple.topNarrow").measured(), "what was not measured is assumed");
        assertTrue(ui(() -> session(editor).shown().assessment().orElseThrow().sidesCloseAt().isPresent()));
        assertTrue(Files.exists(folder.resolve("class-blank-7.reed")));

        ui(() -> Workshop.of(workbench()).studio().steps().undo());
        assertFalse(Files.exists(folder.resolve("class-blank-7.reed")), "a new file can be taken back");
    }

    @Test
    void fromPartsOfTheStudio() throws Exception {
        Shell dialog = dialog("culm.studio.newDesign", "New design");
        fill(dialog, "name", "Of parts");
        press(dialog, "parts of the studio");
        press(dialog, "Next >");
        keepPicture("new-design-parts");
        press(dialog, "Finish");
        DesignEditor editor = active();
        assertTrue(ui(() -> session(editor).copiesLinkedPart(Inputs.STAPLE_LENGTH)), "the staple is linked");
        Blank blank = ui(() -> session(editor).blank().orElseThrow().blank());
        assertEquals(blank.number(Inputs.STAPLE_LENGTH) + 25, blank.number(Inputs.TIE_LENGTH), 1e-9);
        assertFalse(blank.tolerance(Inputs.TIE_LENGTH).measured());
    }

    @Test
    void fromABlankThatWorksWithTheTurnsThatWereLeft() throws Exception {
        Shell dialog = dialog("culm.studio.newDesign", "New design");
        fill(dialog, "name", "Like twelve");
        ui(() -> find(dialog, org.eclipse.swt.widgets.Combo.class).get(0).setText("Harbour Row, trial 12"));
        ui(() -> find(dialog, org.eclipse.swt.widgets.Button.class).stream().filter(b -> b.getText().startsWith("then tell")).findFirst().orElseThrow().setSelection(true));
        press(dialog, "Finish");
        Shell fit = shell("Start from a blank that works");
        fill(fit, "turnsSeen", "1,5");
        settle();
        keepPicture("fit");
        double before = ui(() -> session((DesignEditor) page().getActiveEditor()).shown().assessment().orElseThrow().turnsBand().orElseThrow().half());
        press(fit, "Use this fit");
        DesignEditor editor = active();
        until("the fit is used", () -> session(editor).shown().assessment().orElseThrow().fitted());
        assertEquals(1.5, ui(() -> session(editor).shown().assessment().orElseThrow().turnsLeft().getAsDouble()), 1e-6);
        assertTrue(ui(() -> session(editor).shown().assessment().orElseThrow().turnsBand().orElseThrow().half()) < before);

        command("culm.design.changes");
        type(editor, Inputs.TIE_LENGTH, "71.5");
        until("the difference is said", () -> editor.changes().sentence().contains("more turns left than the blank that worked"));
        keepPicture("what-changes-if");
        ui(() -> {
            var drawn = editor.figures().get(0);
            assertEquals("the blank that worked and now", drawn.onScreen().orElseThrow().title());
            assertTrue(drawn.onPaper(1).isPresent());
            assertTrue(drawn.table().rows().stream().anyMatch(r -> r[1] != r[2]), "how far the sides are open differs somewhere");
            ScrollPage column = find(workbench().getActiveWorkbenchWindow().getShell(), ScrollPage.class).stream().filter(ScrollPage::isVisible).findFirst().orElseThrow();
            key(display().getFocusControl(), SWT.PAGE_DOWN, 0);
            assertTrue(column.getOrigin().y > 0, "the drawing is reached by keys while the focus is in the form");
            key(display().getFocusControl(), SWT.PAGE_UP, 0);
            assertEquals(0, column.getOrigin().y);
        });
        command("org.eclipse.ui.edit.undo");
        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertFalse(ui(() -> session(editor).shown().assessment().orElseThrow().fitted()), "the fit can be taken back");
        command("culm.design.reed");
    }
}
