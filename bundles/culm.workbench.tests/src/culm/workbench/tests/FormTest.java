package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.geometry.shape.EdgeKind;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NumberField;

/** The form: units, comma, rows pasted, undo of typing. */
class FormTest extends StudioTest {
    private static final String FILE = "trial-12.reed";

    private void open(DesignEditor editor, String table) throws Exception {
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> table.equals(l.getData("culm.table"))).findFirst().orElseThrow().click());
        settle();
    }

    private void paste(DesignEditor editor, String path, String text) throws Exception {
        ui(() -> {
            Clipboard clipboard = new Clipboard(display());
            clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
            clipboard.dispose();
            field(editor, path).setFocus();
        });
        command("org.eclipse.ui.edit.paste");
        shown(editor);
    }

    @Test
    void anEnglishHornIsNotToldWhatIsUsualForAnOboe() throws Exception {
        assertTrue(toldOfTheStaple(open(FILE)).contains("usual 47.00\u2009mm"));
        String horn = toldOfTheStaple(open("horn-3.reed"));
        assertTrue(horn.contains("5.00 to 100.00\u2009mm") && !horn.contains("usual") && !horn.contains("oboe"), horn);
    }

    private String toldOfTheStaple(DesignEditor editor) throws Exception {
        shown(editor);
        return ui(() -> {
            field(editor, Inputs.STAPLE_LENGTH).setFocus();
            return find(editor.form(), Label.class).stream().map(Label::getText).filter(t -> t.contains("caliper") || t.contains(" to ")).collect(Collectors.joining("\n"));
        });
    }

    @Test
    void rowsOfASpreadsheetArePastedAsOneStep() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        open(editor, "shape.places");
        paste(editor, "shape.places[0].width", "place\twidth\n0\t7,10\n10\t6,60\n26\t4,90\n37\t4,40\n");
        // The first cell of the second column takes a whole table only from the first column on: so nothing has changed.
        assertEquals(before, ui(() -> session(editor).text()));
        String place = ui(() -> session(editor).blank().orElseThrow().blank().shape().type().tables().get(0).columns().get(0).id());
        paste(editor, "shape.places[0]." + place, "place\twidth\n0\t7,10\n10\t6,60\n26\t4,90\n37\t4,40\n");
        assertEquals(4, ui(() -> session(editor).blank().orElseThrow().blank().shape().values().table("places").rows()));
        assertEquals(6.6, value(editor, "shape.places[1].width"), 1e-9);
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> session(editor).text()));
        paste(editor, "shape.places[0]." + place, "0\t7.1\n10\tsix\n");
        assertEquals(before, ui(() -> session(editor).text()), "a line that is no number changes nothing");
    }

    private void row(String words) throws Exception {
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> ("shape.places " + words).equals(l.getData("culm.rows"))).findFirst().orElseThrow().click());
    }

    @Test
    void rowsAreAddedSortedAndRemovedEachAsOneStep() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        int rows = places(editor);
        open(editor, "shape.places");
        row("add a row");
        shown(editor);
        assertEquals(rows + 1, places(editor));
        type(editor, "shape.places[" + rows + "].fromFold", "30,5");
        row("sort");
        shown(editor);
        for (int i = 1; i <= rows; i++) {
            assertTrue(value(editor, "shape.places[" + i + "].fromFold") > value(editor, "shape.places[" + (i - 1) + "].fromFold"), "row " + (i + 1) + " comes after the one above");
        }
        ui(() -> key(field(editor, "shape.places[1].width"), SWT.DEL, SWT.MOD1));
        shown(editor);
        assertEquals(rows, places(editor));
        for (int step = 0; step < 4; step++) {
            ui(() -> session(editor).undo());
        }
        assertEquals(before, ui(() -> session(editor).text()));
    }

    private int places(DesignEditor editor) throws Exception {
        return ui(() -> session(editor).blank().orElseThrow().blank().shape().values().table("places").rows());
    }

    @Test
    void lengthsAreShownAndReadInThousandthsOfAnInch() throws Exception {
        DesignEditor editor = open(FILE);
        command("culm.window.thou");
        try {
            assertEquals("2835\u2009thou", ui(() -> field(editor, Inputs.TIE_LENGTH).getText()));
            type(editor, Inputs.TIE_LENGTH, "2800");
            assertEquals(71.12, value(editor, Inputs.TIE_LENGTH), 1e-9);
            type(editor, Inputs.TIE_LENGTH, "71,5 mm");
            assertEquals(71.5, value(editor, Inputs.TIE_LENGTH), 1e-9);
        } finally {
            command("culm.window.mm");
        }
        assertEquals("71.5\u2009mm", ui(() -> field(editor, Inputs.TIE_LENGTH).getText()));
    }

    @Test
    void typingInAFieldHasItsOwnUndo() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.FINISHED, "69.5");
        String changed = ui(() -> session(editor).text());
        ui(() -> {
            StyledText field = field(editor, Inputs.TIE_LENGTH);
            field.setFocus();
            field.setText("7");
            field.setText("71");
        });
        command("org.eclipse.ui.edit.undo");
        assertEquals("7", ui(() -> field(editor, Inputs.TIE_LENGTH).getText()));
        command("org.eclipse.ui.edit.undo");
        assertEquals("72.0\u2009mm", ui(() -> field(editor, Inputs.TIE_LENGTH).getText()));
        assertEquals(changed, ui(() -> session(editor).text()), "the design was left alone");
        command("org.eclipse.ui.edit.undo");
        assertFalse(ui(editor::isDirty), "now nothing is typed, and the design's own step goes back");
    }

    @Test
    void measuredOrAssumedIsSaidByACommand() throws Exception {
        DesignEditor editor = open(FILE);
        assertTrue(ui(() -> session(editor).blank().orElseThrow().blank().tolerance(Inputs.TIE_LENGTH).measured()));
        ui(() -> field(editor, Inputs.TIE_LENGTH).setFocus());
        command("culm.design.measured");
        assertFalse(ui(() -> session(editor).blank().orElseThrow().blank().tolerance(Inputs.TIE_LENGTH).measured()));
    }

    private Combo choice(String item) {
        return find(window().getShell(), Combo.class).stream().filter(c -> List.of(c.getItems()).contains(item)).findFirst().orElseThrow();
    }

    @Test
    void whatIsOutOfSightBelowIsSaid() throws Exception {
        DesignEditor editor = open(FILE);
        Point before = ui(() -> window().getShell().getSize());
        try {
            ui(() -> window().getShell().setSize(1280, 800));
            settle();
            Label below = ui(() -> find(editor.form(), Label.class).stream().filter(l -> l.getText().endsWith("more below")).findFirst().orElseThrow());
            assertFalse(ui(below::isVisible), "all of it can be seen");
            ui(() -> editor.form().open("Cane", true));
            settle();
            assertTrue(ui(below::isVisible));
            assertTrue(ui(() -> below.getBounds().width >= below.computeSize(SWT.DEFAULT, SWT.DEFAULT).x), "the words are whole");
            ui(() -> editor.form().focus(Inputs.FINISHED));
            settle();
            assertFalse(ui(below::isVisible), "the last row can be seen now");
            ui(() -> editor.form().focus(Inputs.STAPLE_LENGTH));
            settle();
            assertTrue(ui(below::isVisible));
        } finally {
            ui(() -> window().getShell().setSize(before));
        }
    }

    private void choose(DesignEditor editor, String item) throws Exception {
        ui(() -> {
            Combo combo = choice(item);
            combo.select(combo.indexOf(item));
            combo.notifyListeners(SWT.Selection, new Event());
        });
        shown(editor);
    }

    @Test
    void whatIsChosenFollowsUndo() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> editor.form().open("Cane", true));
        settle();
        String before = ui(() -> choice("along the radius").getText());
        choose(editor, "along the radius");
        assertEquals(EdgeKind.RADIAL, ui(() -> session(editor).blank().orElseThrow().blank().cut().edges()));
        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertEquals(before, ui(() -> choice("along the radius").getText()), "the edges as they are again");
        command("org.eclipse.ui.edit.redo");
        shown(editor);
        assertEquals("along the radius", ui(() -> choice("along the radius").getText()));
        choose(editor, "around the bark");
        choose(editor, "straight across");
        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertEquals("around the bark", ui(() -> choice("around the bark").getText()));
        assertEquals("along the radius", ui(() -> choice("along the radius").getText()), "what was not taken back stays");
    }

    @Test
    void edgesToldByTwoWidthsBeginAsTheyAre() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> editor.form().open("Cane", true));
        settle();
        String before = ui(() -> session(editor).text());
        for (String edges : List.of("square to the chord", "along the radius")) {
            choose(editor, edges);
            double open = openAtTop(editor);
            choose(editor, "two widths");
            Blank blank = ui(() -> session(editor).blank().orElseThrow().blank());
            assertEquals(EdgeKind.TWO_WIDTHS, blank.cut().edges());
            assertEquals(places(editor), blank.insideWidths().orElseThrow().rows());
            assertEquals("assumed", blank.tolerance("inside.places[0].width").measured() ? "measured" : "assumed");
            assertEquals(open, openAtTop(editor), 0.011, "to hundredths of a mm it is the same blank");
            assertTrue(tables().contains("inside widths, 8 rows"), tables().toString());
            type(editor, Inputs.TIE_LENGTH, "72.1");
            open(editor, "inside.places");
            type(editor, "inside.places[5].width", "5");
            assertEquals(5, value(editor, "inside.places[5].width"), 1e-9);
            open(editor, "inside.places");
            for (int step = 0; step < 3; step++) {
                command("org.eclipse.ui.edit.undo");
            }
            shown(editor);
            assertFalse(tables().toString().contains("inside"), "only where they count");
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> session(editor).text()));
    }

    private List<String> tables() throws Exception {
        return ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> l.getData("culm.table") != null && l.isVisible()).map(l -> l.words().substring(2)).toList());
    }

    private double openAtTop(DesignEditor editor) throws Exception {
        return ui(() -> session(editor).shown().assessment().orElseThrow().openAtStapleTop().orElseThrow());
    }

    private double turns(DesignEditor editor) throws Exception {
        return ui(() -> session(editor).shown().assessment().orElseThrow().turnsLeft().orElseThrow());
    }

    @Test
    void theWheelScrollsAndChoosesNothing() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> editor.form().open("Cane", true));
        settle();
        String before = ui(() -> session(editor).text());
        ui(() -> {
            Combo combo = choice("along the radius");
            ScrolledComposite page = find(editor.form(), ScrolledComposite.class).get(0);
            page.setOrigin(0, 100);
            int chosen = combo.getSelectionIndex();
            Event wheel = new Event();
            wheel.count = -3;
            wheel.doit = true;
            combo.notifyListeners(SWT.MouseVerticalWheel, wheel);
            assertFalse(wheel.doit, "the toolkit would choose the next one");
            assertEquals(chosen, combo.getSelectionIndex());
            assertTrue(page.getOrigin().y > 100, "it scrolls instead");
        });
        assertEquals(before, ui(() -> session(editor).text()));
    }

    @Test
    void whatIsTypedAndNotEnteredIsSaved() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> {
            StyledText field = field(editor, Inputs.FINISHED);
            field.setFocus();
            assertFalse(editor.isDirty());
            field.setText("68.5");
            assertTrue(editor.isDirty(), "the star is there, and Save");
        });
        command("org.eclipse.ui.file.save");
        assertEquals(68.5, value(editor, Inputs.FINISHED), 1e-9);
        assertFalse(ui(editor::isDirty));
        assertTrue(java.nio.file.Files.readString(folder.resolve(FILE)).contains("68.5"));
    }

    @Test
    void theSameNumberIsNoChangeAndARefusalEndsWithTheNextOne() throws Exception {
        DesignEditor editor = open(FILE);
        String before = ui(() -> session(editor).text());
        type(editor, Inputs.THREAD_DIAMETER, "0.410");
        assertEquals(before, ui(() -> session(editor).text()), "the thread stays linked");
        type(editor, Inputs.THREAD_DIAMETER, "abc");
        assertTrue(ui(() -> rows(editor)).contains(Inputs.THREAD_DIAMETER), "it is marked");
        type(editor, Inputs.FINISHED, "69");
        assertFalse(ui(() -> rows(editor)).contains(Inputs.THREAD_DIAMETER));
    }

    /** Paths of fields that are marked as wrong. */
    private List<String> rows(DesignEditor editor) {
        return find(editor.form(), NumberField.class).stream().filter(NumberField::wrong).map(f -> String.valueOf(f.control().getData("culm.path"))).toList();
    }

    @Test
    void whatMadeTheRowsAnewHasTheFocusAgain() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> editor.form().open("Cane", true));
        settle();
        ui(() -> choice("another at the end").setFocus());
        choose(editor, "another at the end");
        assertEquals("along the cane", ui(() -> String.valueOf(display().getFocusControl().getData("culm.choice"))));
        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertEquals("along the cane", ui(() -> String.valueOf(display().getFocusControl().getData("culm.choice"))), "and the next key is heard");
    }

    @Test
    void aGougeMayBeAnotherAtTheEnd() throws Exception {
        DesignEditor editor = open(FILE);
        ui(() -> editor.form().open("Cane", true));
        settle();
        String before = ui(() -> session(editor).text());
        double turns = turns(editor);
        choose(editor, "another at the end");
        assertEquals(turns, turns(editor), 1e-6, "it begins as the other");
        type(editor, "gougeEnd.middle", "0.65");
        assertTrue(Math.abs(turns(editor) - turns) > 0.1, "the sides lie between fold and end");
        ui(() -> {
            Combo kind = find(window().getShell(), Combo.class).stream().filter(c -> "kind at the end".equals(c.getData("culm.choice"))).findFirst().orElseThrow();
            assertEquals(choice("another at the end").getParent(), kind.getParent());
        });
        choose(editor, "the same gouge");
        assertEquals(turns, turns(editor), 1e-6);
        for (int step = 0; step < 3; step++) {
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> session(editor).text()));
    }

    @Test
    void anAbsentMarkIsAbsentNotZero() throws Exception {
        DesignEditor editor = open("horn-3.reed");
        assertEquals("none", ui(() -> field(editor, Inputs.CORK_TOP).getText()));
        type(editor, Inputs.CORK_TOP, "8");
        assertEquals(8, value(editor, Inputs.CORK_TOP), 1e-9);
        type(editor, Inputs.CORK_TOP, "none");
        assertTrue(ui(() -> session(editor).blank().orElseThrow().blank().value(Inputs.CORK_TOP).isEmpty()));
    }
}
