package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.model.Batch;
import culm.model.MeasuredStaple;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.BenchHeader;
import culm.workbench.internal.bench.batch.BatchActions;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.paper.PagesDialog;
import culm.workbench.internal.studio.StudioView;
import culm.workbench.internal.widgets.LinkText;

/** The whole way through the editor for a batch: measured, pasted, read, split, saved, opened again, put on cards. */
class BatchEditorTest extends BenchTest {
    private static final String FILE = "class-box.batch";

    private List<MeasuredStaple> staples(BatchEditor editor) throws Exception {
        return ui(() -> List.copyOf(((Batch) editor.session().document()).getStaples()));
    }

    private void split(BatchEditor editor) throws Exception {
        until("the batch is split", () -> !editor.pending());
    }

    @Test
    void aBatchThatMayOnlyBeLookedAtLooksLikeIt() throws Exception {
        Files.writeString(folder.resolve(FILE), text(FILE).replace("format=\"1\"", "format=\"99\""));
        BatchEditor editor = openBatch(FILE);
        Grid grid = editor.grid();
        String before = ui(() -> editor.session().text());
        int staples = staples(editor).size();
        ui(() -> grid.go(1, 2));
        assertFalse(ui(() -> cell(grid).getEditable()));
        assertTrue(ui(() -> find(window().getShell(), StyledText.class).stream()
                .filter(t -> List.of("caliper", "below", "step", "margin").contains(String.valueOf(t.getData("culm.path")))).noneMatch(StyledText::getEditable)));
        RGB paper = ui(() -> grid.getBackground().getRGB());
        assertEquals(paper, ui(() -> cell(grid).getBackground().getRGB()), "as plain text");
        keepPicture("batch-look-only");
        assertTrue(ui(() -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().equals("This batch can only be looked at."))));
        ui(() -> grid.go(staples, 1));
        assertEquals(staples - 1, ui(grid::row), "there is no empty row to type into");
        caliper(grid, "47.02");
        assertEquals(before, ui(() -> editor.session().text()));
    }

    /** What comes of a batch, in words and drawn, follows the unit. */
    private void inThousandths(BatchEditor editor) throws Exception {
        List<String> mm = ui(editor::notes);
        assertEquals(List.of("", "mm", "mm", "mm", "mm", "left", "", ""), ui(editor::units));
        assertTrue(mm.get(0).matches("Setting 1: tie at \\d\\d\\.\\d mm"), mm.toString());
        command("culm.window.thou");
        try {
            assertTrue(ui(editor::sentence).matches("2 of 2 staples in 1 setting: tie at \\d{4} thou.*"), ui(editor::sentence));
            assertTrue(ui(editor::notes).get(0).matches("Setting 1: tie at \\d{4} thou"), ui(editor::notes).toString());
            String drawn = ui(() -> find(window().getShell(), culm.workbench.internal.bench.page.DrawingCanvas.class).get(0).onScreen().orElseThrow()).flat().toString();
            assertTrue(drawn.contains("Tie lengths that each staple allows, thou"), drawn);
            assertEquals(List.of("", "thou", "thou", "thou", "thou", "left", "", ""), ui(editor::units));
            keepPicture("batch-thousandths");
        } finally {
            command("culm.window.mm");
        }
        assertEquals(mm, ui(editor::notes));
    }

    @Test
    void aCaliperThatTypesAValueAndEnterFillsTheTable() throws Exception {
        BatchEditor editor = newBatch();
        Grid grid = editor.grid();
        String before = ui(() -> editor.session().text());
        ui(() -> grid.go(0, 1));
        caliper(grid, "47.02", "3.38", "2.12", "46,88", "3,40", "2,11");
        assertEquals(2, staples(editor).size());
        assertEquals("1", staples(editor).get(0).getLabel());
        assertEquals(List.of(46.88), staples(editor).get(1).getLengths());
        assertEquals(List.of(3.4), staples(editor).get(1).getTopWides());
        assertEquals(List.of(2.11), staples(editor).get(1).getTopNarrows());
        assertEquals(2, ui(grid::row), "the empty row for the next staple");
        assertEquals(1, ui(grid::column));
        split(editor);
        assertTrue(ui(editor::sentence).startsWith("2 of 2 staples in 1 setting: tie at "), ui(editor::sentence));
        inThousandths(editor);

        for (int i = 0; i < 6; i++) {
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> editor.session().text()));
        assertFalse(ui(editor::isDirty));
        for (int i = 0; i < 6; i++) {
            command("org.eclipse.ui.edit.redo");
        }
        String changed = ui(() -> editor.session().text());
        ui(() -> page().saveEditor(editor, false));
        assertFalse(ui(editor::isDirty));
        assertEquals(changed, text("new.batch"));
        ui(() -> page().closeEditor(editor, false));
        BatchEditor again = openBatch("new.batch");
        assertEquals(2, staples(again).size());
        assertEquals(changed, ui(() -> again.session().text()));
    }

    @Test
    void whatIsTypedIntoACellAndNotEnteredIsSaved() throws Exception {
        BatchEditor editor = openBatch(FILE);
        ui(() -> {
            editor.grid().go(1, 1);
            editor.grid().setFocus();
            assertFalse(editor.isDirty());
            cell(editor.grid()).setText("47.31");
            assertTrue(editor.isDirty(), "the star is there, and Save");
        });
        ui(() -> page().saveEditor(editor, false));
        assertEquals(47.31, staples(editor).get(1).getLengths().get(0), 1e-9);
        assertTrue(text(FILE).contains("47.31"));
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void enterMayGoDownAColumn() throws Exception {
        BatchEditor editor = newBatch();
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> l.words().equals("down")).findFirst().orElseThrow().click());
        ui(() -> editor.grid().go(0, 1));
        caliper(editor.grid(), "47.02", "46.88");
        ui(() -> editor.grid().go(0, 2));
        caliper(editor.grid(), "3.38", "3.40", "2.12", "2.11");
        assertEquals(2, staples(editor).size());
        assertEquals(List.of(3.4), staples(editor).get(1).getTopWides());
        assertEquals(List.of(2.11), staples(editor).get(1).getTopNarrows());
    }

    @Test
    void aReadingMayBeRepeatedAndIsMarkedWhenTheCaliperCannotExplainIt() throws Exception {
        BatchEditor editor = openBatch(FILE);
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> l.words().equals("2")).findFirst().orElseThrow().click());
        ui(() -> editor.grid().go(0, 2));
        caliper(editor.grid(), "47.31");
        split(editor);
        assertEquals(List.of(47.0, 47.31), staples(editor).get(0).getLengths());
        assertTrue(ui(editor::notes).stream().anyMatch(n -> n.startsWith("Staple 1: Repeated readings of length differ by 0.31 mm; this caliper explains 0.04 mm.")),
                ui(editor::notes).toString());
    }

    @Test
    void whatIsNoMeasureIsRefusedAndTheCellKeepsIt() throws Exception {
        BatchEditor editor = newBatch();
        ui(() -> editor.grid().go(0, 1));
        caliper(editor.grid(), "4702");
        assertEquals(0, staples(editor).size());
        assertEquals(0, ui(() -> editor.grid().row()));
        assertEquals(1, ui(() -> editor.grid().column()), "it stays where it is to be typed again");
        assertEquals("4702", ui(() -> cell(editor.grid()).getText()));
        caliper(editor.grid(), "47.02");
        assertEquals(List.of(47.02), staples(editor).get(0).getLengths());
    }

    @Test
    void rowsOfASpreadsheetArePastedAsOneStepOrNotAtAll() throws Exception {
        BatchEditor editor = openBatch(FILE);
        String before = ui(() -> editor.session().text());
        int many = staples(editor).size();
        ui(() -> editor.grid().go(many, 1));
        paste(editor.grid(), "47,10\t3,39\t2,12\n46,95\t3,38\t2,10\n");
        assertEquals(many + 2, staples(editor).size());
        assertEquals(List.of(47.1), staples(editor).get(many).getLengths());
        assertEquals(List.of(2.1), staples(editor).get(many + 1).getTopNarrows());
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> editor.session().text()));
        ui(() -> editor.grid().go(many, 1));
        paste(editor.grid(), "47.10\t3.39\t2.12\n46.95\tthree\t2.10\n");
        assertEquals(before, ui(() -> editor.session().text()), "a bad cell would move the rows below it");
    }

    @Test
    void ofATableWithABadRowTheOthersAreTakenAndItIsNamed() throws Exception {
        BatchEditor editor = newBatch();
        Files.writeString(folder.resolve("box.csv"), "staple;length;top wide;top narrow\n7;47,01;3,38;2,12\n8;forty;3,40;2,11\n9;46,90;3,39;2,10\n# ties in steps of: 0.5 mm\n# turns to spare: 0.25\n", StandardCharsets.UTF_8);
        display().asyncExec(() -> new BatchActions(editor).read(folder.resolve("box.csv")));
        Shell said = shell("Not all of it was read");
        String words = ui(() -> find(said, org.eclipse.swt.widgets.Label.class).stream().map(org.eclipse.swt.widgets.Label::getText).reduce("", String::concat));
        assertTrue(words.contains("box.csv, line 3") && words.contains("forty"), words);
        press(said, "OK");
        assertEquals(List.of("7", "9"), staples(editor).stream().map(MeasuredStaple::getLabel).toList());
        assertEquals(List.of(46.9), staples(editor).get(1).getLengths());
        assertEquals(0.5, ui(() -> editor.session().document().getTieStep().getValue()));
        assertEquals(0.25, ui(() -> editor.session().document().getTurnsToSpare().getValue()));
    }

    private void setup(String path, String text) throws Exception {
        ui(() -> {
            StyledText field = find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst().orElseThrow();
            field.setFocus();
            field.setText(text);
            enter(field);
        });
    }

    private List<Double> ties(BatchEditor editor) throws Exception {
        split(editor);
        Pattern tie = Pattern.compile("Setting \\d+: tie at ([0-9.]+) mm");
        return ui(editor::notes).stream().map(tie::matcher).filter(Matcher::matches).map(m -> Double.valueOf(m.group(1))).toList();
    }

    @Test
    void theStepOfTheTiesAndTheTurnsToSpareAreSavedWithTheBatch() throws Exception {
        BatchEditor editor = openBatch(FILE);
        String before = ui(() -> editor.session().text());
        List<Double> usual = ties(editor);
        assertTrue(usual.stream().anyMatch(t -> t * 2 != Math.rint(t * 2)), usual.toString());
        setup("step", "0,5 mm");
        List<Double> halves = ties(editor);
        assertTrue(!halves.isEmpty() && halves.stream().allMatch(t -> t * 2 == Math.rint(t * 2)), halves.toString());
        setup("step", "6");
        assertEquals(halves, ties(editor), "out of its range");
        setup("step", "0.1");
        assertEquals(usual, ties(editor));
        setup("margin", "0.6");
        assertTrue(ties(editor).size() > usual.size(), "less room for each asks for more settings");
        setup("margin", "11");
        setup("margin", "many");
        assertTrue(ties(editor).size() > usual.size());
        setup("step", "0.5");
        List<Double> both = ties(editor);
        ui(() -> page().saveEditor(editor, false));
        assertTrue(text(FILE).contains("<tieStep value=\"0.5\"/>\n  <turnsToSpare value=\"0.6\"/>"), text(FILE));
        for (int i = 0; i < 4; i++) {
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> editor.session().text()));
        assertEquals(usual, ties(editor));
        ui(() -> page().closeEditor(editor, false));
        BatchEditor again = openBatch(FILE);
        assertEquals(both, ties(again), "it is split as it was saved");
    }

    @Test
    void aStapleIsSetAsideWithItsReasonAndTakenAway() throws Exception {
        BatchEditor editor = openBatch(FILE);
        int column = ui(() -> column(editor, "set aside because"));
        ui(() -> editor.grid().go(1, column));
        caliper(editor.grid(), "solder open");
        split(editor);
        assertTrue(ui(editor::notes).contains("Staple 2: solder open"), ui(editor::notes).toString());
        int many = staples(editor).size();
        ui(() -> {
            editor.grid().go(1, 1);
            key(cell(editor.grid()), SWT.DEL, SWT.MOD1);
        });
        assertEquals(many - 1, staples(editor).size());
        assertFalse(staples(editor).stream().anyMatch(s -> s.getLabel().equals("2")));
    }

    @Test
    void wordsHaveTheRoomThatIsLeftAndTheHeadNamesTheStaple() throws Exception {
        Point before = ui(() -> window().getShell().getSize());
        ui(() -> window().getShell().setSize(1900, 1150));
        try {
            BatchEditor editor = openBatch(FILE);
            assertTrue(ui(() -> find(window().getShell(), BenchHeader.class).stream().anyMatch(h -> h.sentence().endsWith("; look again at staple 7"))));
            int notes = ui(() -> column(editor, "notes"));
            ui(() -> editor.grid().go(1, notes));
            ui(() -> {
                int room = editor.grid().getClientArea().width;
                Rectangle cell = cell(editor.grid()).getBounds();
                assertTrue(cell.x + cell.width > room - 10 && cell.x + cell.width <= room, cell + " in " + room);
            });
            keepPicture("batch-wide");
            ui(() -> window().getShell().setSize(before));
            keepPicture("batch-narrow");
        } finally {
            ui(() -> window().getShell().setSize(before));
        }
    }

    private static int column(BatchEditor editor, String head) {
        for (int c = 0; c < editor.heads().size(); c++) {
            if (editor.heads().get(c).equals(head)) {
                return c;
            }
        }
        throw new AssertionError("no column " + head);
    }

    @Test
    void cardsOfABatchAreSeenAndWritten() throws Exception {
        openBatch(FILE);
        Shell dialog = dialog("culm.bench.card", "Bench card");
        Combo each = ui(() -> find(dialog, Combo.class).stream().filter(c -> "each".equals(c.getData("culm.ask"))).findFirst().orElseThrow());
        PagesDialog pages = (PagesDialog) ui(() -> dialog.getData());
        String[] numbers = {"no. set 1", "no. 3", "no. class"};
        for (int i = 0; i < numbers.length; i++) {
            int number = i;
            ui(() -> {
                each.select(number);
                each.notifyListeners(SWT.Selection, new Event());
            });
            String title = ui(() -> pages.shown().orElseThrow().title());
            assertTrue(title.endsWith(numbers[i]), title);
        }
        ui(() -> {
            each.select(0);
            each.notifyListeners(SWT.Selection, new Event());
            pages.svg(folder.resolve("cards.svg"));
        });
        assertTrue(Files.readString(folder.resolve("cards-1.svg")).contains("set 1") && Files.readString(folder.resolve("cards-2.svg")).contains("set 2"));
        assertFalse(Files.exists(folder.resolve("cards-3.svg")));
        ui(dialog::close);
    }

    @Test
    void enterGoesAsFarAsReadingsAreWantedAlthoughOneStapleHasMore() throws Exception {
        BatchEditor editor = openBatch(FILE);
        assertEquals("length 2", ui(() -> editor.heads().get(2)));
        ui(() -> editor.grid().go(0, 1));
        caliper(editor.grid(), "47.01", "3.39", "2.13");
        assertEquals(List.of(47.01), staples(editor).get(0).getLengths());
        assertEquals(List.of(3.39), staples(editor).get(0).getTopWides());
        assertEquals(List.of(2.13), staples(editor).get(0).getTopNarrows());
        assertEquals(1, ui(() -> editor.grid().row()));
    }

    @Test
    void aNewBatchIsMadeForTheDesignThatIsOpenAndOpensFromTheTree() throws Exception {
        openStudio();
        open("trial-12.reed");
        Shell dialog = dialog("culm.bench.newBatch", "New batch of staples");
        ui(() -> find(dialog, org.eclipse.swt.widgets.Text.class).get(0).setText("Autumn box"));
        press(dialog, "OK");
        until("the new batch is open", () -> page().getActiveEditor() instanceof BatchEditor);
        BatchEditor made = ui(() -> (BatchEditor) page().getActiveEditor());
        assertEquals("trial-12.reed", ui(() -> made.session().document().getDesign()));
        assertEquals("length", ui(() -> made.heads().get(made.grid().column())), "the first number is typed there");
        ui(() -> made.grid().setFocus());
        caliper(made.grid(), "47.02");
        split(made);
        assertTrue(ui(made::notes).contains("Staple 1: There is no reading of top wide."), ui(made::notes).toString());
        ui(() -> page().saveEditor(made, false));
        ui(() -> page().closeAllEditors(false));
        until("the tree has it", () -> Workshop.of(workbench()).studio().index().get().entries().stream().anyMatch(e -> e.shown().equals("autumn-box.batch")));
        ui(() -> {
            StudioView view = (StudioView) page().showView(StudioView.ID);
            view.reveal(Workshop.of(workbench()).studio().index().get().entries().stream().filter(e -> e.shown().equals("autumn-box.batch")).findFirst().orElseThrow());
            view.viewer().getTree().notifyListeners(SWT.DefaultSelection, new Event());
        });
        until("it opens from the tree", () -> page().getActiveEditor() instanceof BatchEditor);
        assertEquals(1, staples((BatchEditor) ui(() -> page().getActiveEditor())).size());
        command("culm.window.dark");
        command("culm.window.light");
    }
}
