package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.model.ShapePart;
import culm.model.StaplePart;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.parts.PartsEditor;
import culm.workbench.internal.parts.PartsSession;
import culm.workbench.internal.parts.PreviewGrid;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.RowsList;

/** Parts: edited in their file, chosen for designs, replaced in many, found twice. */
class PartsTest extends StudioTest {
    private static final String FILE = "harbour-row.parts";
    private static final String DESIGN = "trial-12.reed";

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().filter(i -> i.entries().stream().anyMatch(e -> e.file().startsWith(folder))).isPresent());
    }

    private PartsEditor parts(String part) throws Exception {
        PartsEditor editor = ui(() -> (PartsEditor) page().openEditor(new FileInput(folder.resolve(FILE)), PartsEditor.ID));
        ui(() -> editor.choose(part));
        return editor;
    }

    private static PartsSession session(PartsEditor editor) {
        return editor.getAdapter(PartsSession.class);
    }

    private void typed(String path, String text) throws Exception {
        ui(() -> {
            StyledText field = find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst().orElseThrow();
            field.setFocus();
            field.setText(text);
            Event enter = new Event();
            enter.detail = SWT.TRAVERSE_RETURN;
            field.notifyListeners(SWT.Traverse, enter);
        });
    }

    private void words(String asked, String text) throws Exception {
        ui(() -> {
            StyledText field = find(window().getShell(), StyledText.class).stream().filter(t -> asked.equals(t.getData("culm.text"))).findFirst().orElseThrow();
            field.setFocus();
            field.setText(text);
            Event enter = new Event();
            enter.detail = SWT.TRAVERSE_RETURN;
            field.notifyListeners(SWT.Traverse, enter);
        });
    }

    private void choose(String asked, String item) throws Exception {
        ui(() -> {
            Combo combo = find(window().getShell(), Combo.class).stream().filter(c -> asked.equals(c.getData("culm.choice"))).findFirst().orElseThrow();
            combo.select(combo.indexOf(item));
            assertEquals(item, combo.getText());
            combo.notifyListeners(SWT.Selection, new Event());
        });
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> list = Files.list(folder)) {
            for (Path path : list.filter(p -> p.toString().matches(".*\\.(reed|parts)")).toList()) {
                all.put(path.getFileName().toString(), Files.readString(path));
            }
        }
        return all;
    }

    @Test
    void aPartIsEditedTakenBackAndSaved() throws Exception {
        PartsEditor editor = parts("staple-47");
        String before = ui(() -> session(editor).text());
        typed("staple.length", "47,1");
        typed("staple.topWide", "3.36");
        words("name", "47, measured anew");
        words("source", "the drawer by the window, invented");
        words("measured on", "2026-10-02");
        words("notes", "a little wider than the others");
        StaplePart staple = ui(() -> (StaplePart) editor.chosen().orElseThrow());
        assertEquals(47.1, staple.getLength().getValue(), 1e-9);
        assertEquals("2026-10-02", staple.getMeasuredOn().toString());
        keepPicture("parts-editor");
        ui(() -> page().saveEditor(editor, false));
        assertTrue(text(FILE).contains("<length value=\"47.1\" tolerance=\"0.05\" how=\"measured\"/>") && text(FILE).contains("47, measured anew"));
        for (int i = 0; i < 6; i++) {
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> session(editor).text()));
        for (int i = 0; i < 6; i++) {
            command("org.eclipse.ui.edit.redo");
        }
        assertEquals(text(FILE), ui(() -> session(editor).text()));
    }

    @Test
    void theChosenPartIsDrawnAndFollowsEdits() throws Exception {
        PartsEditor editor = parts("shape-mooring");
        String before = drawn("Shape");
        assertTrue(before.contains("Shape as cut, width over the distance from the fold, mm") && before.contains("4.83 at 26"), before);
        typed("shape.places[5].width", "4.9");
        assertTrue(drawn("Shape").contains("4.90 at 26"), drawn("Shape"));
        keepPicture("parts-shape");
        ui(() -> editor.choose("gouge-60-45"));
        assertTrue(drawn("Gouge").contains("thickness, mm"));
        keepPicture("parts-gouge");
        ui(() -> editor.choose("staple-47"));
        assertTrue(drawn("Staple").contains("staple length 47.0"), drawn("Staple"));
        assertTrue(onPaper("Staple").contains("area, mm²"), onPaper("Staple"));
        keepPicture("parts-staple");
        command("culm.design.table");
        String table = ui(() -> {
            Clipboard clipboard = new Clipboard(display());
            try {
                return (String) clipboard.getContents(TextTransfer.getInstance());
            } finally {
                clipboard.dispose();
            }
        });
        assertTrue(table.startsWith("height mm\tbore area mm²\n0\t") && table.lines().count() == 96, table);
        command("culm.window.thou");
        try {
            assertTrue(drawn("Staple").contains("staple length 1850") && !drawn("Staple").contains("mm"), drawn("Staple"));
            assertTrue(onPaper("Staple").contains("area, in²") && !onPaper("Staple").contains("mm"), onPaper("Staple"));
        } finally {
            command("culm.window.mm");
        }
        command("culm.window.dark");
        keepPicture("parts-staple-dark");
        command("culm.window.light");
        ui(() -> editor.choose("ff"));
        assertTrue(drawn("Thread").contains("turn to turn 0.41"), drawn("Thread"));
        typed("thread.pitch", "0.5");
        assertTrue(drawn("Thread").contains("turn to turn 0.50"), drawn("Thread"));
        keepPicture("parts-thread");
        command("culm.window.dark");
        keepPicture("parts-thread-dark");
        command("culm.window.light");
    }

    private String drawn(String title) throws Exception {
        return ui(() -> words(((Figure) figure(title)).onScreen()));
    }

    private String onPaper(String title) throws Exception {
        return ui(() -> words(((Figure) figure(title)).onPaper(1)));
    }

    private static String words(java.util.Optional<culm.figures.Drawing> drawing) {
        StringBuilder all = new StringBuilder();
        drawing.orElseThrow().flat().forEach(i -> all.append(i instanceof culm.figures.Text t ? t.text() + "\n" : ""));
        return all.toString();
    }

    @Test
    void aDayThatIsNoneIsRefusedInWords() throws Exception {
        PartsEditor editor = parts("staple-47");
        words("measured on", "last week");
        assertFalse(ui(editor::isDirty));
        typed("staple.length", "4700");
        assertFalse(ui(editor::isDirty), "out of range");
    }

    @Test
    void aDrawerThatMayOnlyBeLookedAtLooksLikeIt() throws Exception {
        String newer = text(FILE).replace("format=\"1\"", "format=\"99\"");
        Files.writeString(folder.resolve(FILE), newer);
        PartsEditor editor = parts("gouge-60-45");
        typed("gouge.middle", "0.55");
        words("source", "someone else");
        assertFalse(ui(editor::isDirty));
        ui(() -> {
            assertTrue(find(window().getShell(), StyledText.class).stream().filter(t -> String.valueOf(t.getData("culm.path")).startsWith("gouge.")).noneMatch(StyledText::getEditable));
            List<StyledText> words = find(window().getShell(), StyledText.class).stream().filter(t -> t.getData("culm.text") != null).toList();
            assertTrue(words.size() == 4 && words.stream().noneMatch(StyledText::getEditable));
            assertTrue(words.stream().allMatch(t -> (t.getStyle() & SWT.BORDER) == 0 && t.getBackground().equals(t.getParent().getBackground())), "as plain text");
            assertTrue(find(window().getShell(), Combo.class).stream().filter(c -> c.getData("culm.choice") != null).noneMatch(Combo::isEnabled));
            assertTrue(find(window().getShell(), LinkText.class).stream().filter(l -> List.of("copy", "remove").contains(l.words())).noneMatch(LinkText::isVisible));
        });
        keepPicture("parts-look-only");
    }

    @Test
    void theBoreOfAStapleFitsBelowItsSidesInASmallWindow() throws Exception {
        Point before = ui(() -> window().getShell().getSize());
        try {
            ui(() -> window().getShell().setSize(1280, 800));
            parts("staple-47");
            atRest();
            assertTrue(drawn("Staple").contains("area, mm²"), drawn("Staple"));
            assertTrue(ui(() -> ((Figure) figure("Staple")).onScreen().orElseThrow().height() <= figure("Staple").getClientArea().height), "all of it is seen");
            assertTrue(ui(() -> ((Figure) figure("Staple")).onScreen().orElseThrow().height() > 400), "it takes the room there is, so that its areas have numbers");
            keepPicture("parts-staple-small");
        } finally {
            ui(() -> window().getShell().setSize(before));
        }
    }

    @Test
    void iconsAreNotLeftToTheToolkitWhichBlowsThemUp() throws Exception {
        PartsEditor editor = parts("staple-47");
        atRest();
        ui(() -> {
            Table list = find(window().getShell(), Table.class).stream().filter(t -> t.getItemCount() == editor.parts().size()).findFirst().orElseThrow();
            ImageData own = list.getItem(0).getImage().getImageData();
            for (int i = 0; i < own.width * own.height; i++) {
                assertEquals(0, own.getAlpha(i % own.width, i / own.width), "it keeps the room and shows nothing");
            }
            Rectangle place = list.getItem(0).getImageBounds(0);
            Image screen = new Image(display(), place.width, place.height);
            GC gc = new GC(list);
            gc.copyArea(screen, place.x, place.y);
            gc.dispose();
            ImageData seen = screen.getImageData();
            screen.dispose();
            assertTrue(IntStream.range(0, seen.width * seen.height).map(i -> seen.getPixel(i % seen.width, i / seen.width)).distinct().count() > 5, "the icon is painted there");
        });
    }

    @Test
    void aNameThatIsTooLongForTheListIsCutAndToldUnderThePointer() throws Exception {
        PartsEditor editor = parts("staple-47");
        words("name", "47, the second one from the left of the lower drawer");
        ui(() -> {
            Table list = find(window().getShell(), Table.class).stream().filter(t -> t.getItemCount() == editor.parts().size()).findFirst().orElseThrow();
            String shown = list.getItem(0).getText();
            assertTrue(shown.startsWith("47") && shown.contains("…") && shown.endsWith("drawer"), shown);
            mouse(list, SWT.MouseMove, 40, list.getItem(0).getBounds().y + 5);
            assertEquals("47, the second one from the left of the lower drawer", list.getToolTipText());
        });
    }

    /** Along the radius the inside is narrower than the outside, square to the chord it is not. */
    @Test
    void insideWidthsBeginAsTheEdgesOfThePartStand() throws Exception {
        PartsEditor editor = parts("shape-mooring");
        choose("edges", "along the radius");
        choose("edges", "two widths");
        ShapePart shape = ui(() -> (ShapePart) editor.chosen().orElseThrow());
        double outside = shape.getProfile().getTables().get(0).getRows().get(5).getCells().get("width").orElseThrow();
        double inside = shape.getInside().getRows().get(5).getCells().get("width").orElseThrow();
        assertTrue(inside < outside - 0.3 && inside > outside - 1, inside + " inside, " + outside + " outside");
        command("org.eclipse.ui.edit.undo");
        command("org.eclipse.ui.edit.undo");
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void wetOrDryAndTheKindAreChosen() throws Exception {
        PartsEditor editor = parts("gouge-60-45");
        choose("measured on cane that was", "wet");
        assertTrue(ui(() -> session(editor).text()).contains("<moisture>wet</moisture>"));
        choose("kind of gouge", "concentric");
        assertTrue(ui(() -> session(editor).text()).contains("culm.gouge.concentric"));
        command("org.eclipse.ui.edit.undo");
        command("org.eclipse.ui.edit.undo");
        assertFalse(ui(editor::isDirty));
        assertEquals("middle and side", ui(() -> find(window().getShell(), Combo.class).stream().filter(c -> "kind of gouge".equals(c.getData("culm.choice"))).findFirst().orElseThrow().getText()));
    }

    @Test
    void partsAreCopiedAndRemoved() throws Exception {
        PartsEditor editor = parts("staple-47");
        int before = ui(() -> editor.parts().size());
        click("copy");
        assertEquals(before + 1, ui(() -> editor.parts().size()));
        assertTrue(ui(() -> editor.chosen().orElseThrow().getName()).endsWith("copy"));
        click("remove");
        assertEquals(before, ui(() -> editor.parts().size()));
        ui(() -> editor.choose("staple-47"));
        click("remove");
        Shell asked = shell("Remove 47, class set");
        assertTrue(ui(() -> find(asked, Label.class).stream().anyMatch(l -> l.getText().startsWith("Remove 47, class set? ") && l.getText().endsWith(" Undo puts it back."))), "it is asked in words");
        press(asked, "Cancel");
        assertEquals(before, ui(() -> editor.parts().size()), "designs use it");
    }

    @Test
    void theDesignsThatUseItAreListed() throws Exception {
        parts("staple-47");
        int users = ui(() -> Workshop.of(workbench()).studio().index().orElseThrow().usersOf(folder.resolve(FILE), "staple-47").size());
        assertTrue(users > 1);
        assertTrue(ui(() -> find(window().getShell(), Table.class).stream().anyMatch(t -> t.getItemCount() == users)));
    }

    @Test
    void designsThatAreOutOfSightAreCounted() throws Exception {
        parts("ff");
        until("all users are listed", () -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().startsWith("Used by ")));
        ui(() -> {
            Label head = find(window().getShell(), Label.class).stream().filter(l -> l.getText().startsWith("Used by ")).findFirst().orElseThrow();
            Table table = find(head.getParent(), Table.class).get(0);
            int count = table.getItemCount();
            int rows = Math.round((float) table.getClientArea().height / table.getItemHeight());
            assertTrue(count > rows, "some are out of sight");
            assertEquals("Used by " + count + " designs, " + (count - rows) + " more below", head.getText());
            assertTrue(head.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= head.getSize().x, "read in full");
            table.setTopIndex(count - 1);
            table.getVerticalBar().notifyListeners(SWT.Selection, new Event());
            assertTrue(head.getText().contains(" above") && !head.getText().contains("below"), head.getText());
        });
        keepPicture("parts-users");
    }

    private void partMenu(String word, String item) throws Exception {
        ui(() -> {
            LinkText link = find(window().getShell(), LinkText.class).stream().filter(l -> word.equals(l.getData("culm.partLink"))).findFirst().orElseThrow();
            Menu menu = ((culm.workbench.internal.parts.PartLink) link.getData("culm.partLink.menu")).menu();
            for (MenuItem each : menu.getItems()) {
                each.setSelection(false);
            }
            MenuItem chosen = Stream.of(menu.getItems()).filter(i -> i.getText().startsWith(item)).findFirst().orElseThrow();
            assertTrue(chosen.isEnabled(), item);
            chosen.setSelection(true);
            chosen.notifyListeners(SWT.Selection, new Event());
            menu.dispose();
        });
    }

    @Test
    void aDesignTakesAnotherPartOrACopy() throws Exception {
        DesignEditor editor = open(DESIGN);
        String before = ui(() -> session(editor).text());
        partMenu("staple", "46, one of the short ones");
        shown(editor);
        assertEquals(46, value(editor, "staple.length"), 1e-9);
        assertTrue(ui(() -> session(editor).text()).contains("harbour-row.parts#staple-46"));
        partMenu("staple", "Copy into this design");
        shown(editor);
        assertTrue(ui(() -> session(editor).text()).contains("<length value=\"46\""));
        assertEquals(46, value(editor, "staple.length"), 1e-9);
        command("org.eclipse.ui.edit.undo");
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> session(editor).text()));
        keepPicture("part-links");
        partMenu("staple", "Open its file");
        assertTrue(ui(() -> page().getActiveEditor() instanceof PartsEditor parts && parts.chosen().orElseThrow().getId().equals("staple-47")));
    }

    @Test
    void aPartOfADesignsOwnIsPutIntoTheDrawer() throws Exception {
        DesignEditor editor = open(DESIGN);
        String drawer = text(FILE);
        partMenu("staple", "Copy into this design");
        type(editor, "staple.length", "46.8");
        partMenu("staple", "Put into Harbour Row");
        shown(editor);
        assertEquals(46.8, value(editor, "staple.length"), 1e-9);
        assertTrue(text(FILE).contains("<length value=\"46.8\""));
        assertTrue(ui(() -> session(editor).text()).contains("harbour-row.parts#47-class-set"), ui(() -> session(editor).text()));
        command("org.eclipse.ui.edit.undo");
        assertTrue(ui(() -> session(editor).text()).contains("<length value=\"46.8\""));
        settle();
        ui(() -> page().showView("culm.workbench.studio").setFocus());
        command("org.eclipse.ui.edit.undo");
        assertEquals(drawer, text(FILE));
    }

    @Test
    void numbersThatDoNotGoTogetherAreTold() throws Exception {
        PartsEditor editor = parts("staple-47-places");
        typed("staple.places[1].height", "26");
        assertTrue(ui(editor::isDirty));
        assertTrue(ui(() -> find(window().getShell(), org.eclipse.swt.widgets.Label.class).stream().anyMatch(l -> l.isVisible() && l.getText().contains("25"))));
        keepPicture("part-trouble");
    }

    @Test
    void whereTheLinkLeadsNowhereAnotherPartIsChosen() throws Exception {
        Files.writeString(folder.resolve(DESIGN), text(DESIGN).replace("#staple-47\"", "#lost\""));
        DesignEditor editor = open(DESIGN);
        assertTrue(ui(() -> session(editor).blank().isEmpty()));
        assertTrue(ui(() -> said("which has no part \"lost\"")));
        assertTrue(ui(() -> said("Choose another part from its list")));
        ui(() -> {
            RowsList findings = find(window().getShell(), RowsList.class).stream().filter(l -> l.getClass().getSimpleName().equals("FindingsList")).findFirst().orElseThrow();
            assertTrue(findings.computeSize(600, SWT.DEFAULT).y < 10, "no heading stands over nothing");
            assertFalse(findings.isEnabled(), "nothing to go to");
        });
        keepPicture("lost-part");
        partMenu("staple", "47, class set");
        shown(editor);
        assertEquals(47, value(editor, "staple.length"), 1e-9);
    }

    @Test
    void onePartTakesAnothersPlaceInManyDesignsAsOneStep() throws Exception {
        Map<String, String> before = files();
        parts("staple-47");
        Shell dialog = dialog("culm.sharing.replace", "Replace 47, class set");
        ui(() -> {
            Combo by = find(dialog, Combo.class).get(0);
            by.select(Stream.of(by.getItems()).map(t -> t.startsWith("46,")).toList().indexOf(true));
            by.notifyListeners(SWT.Selection, new Event());
        });
        until("every design is looked at", () -> find(dialog, org.eclipse.swt.widgets.Button.class).stream().anyMatch(b -> b.getText().equals("Replace") && b.isEnabled()));
        keepPicture("replace");
        ui(() -> {
            dialog.setSize(560, 500);
            PreviewGrid grid = find(dialog, PreviewGrid.class).get(0);
            assertTrue(grid.said().stream().noneMatch(l -> l.contains("…")), grid.said().toString());
            assertTrue(grid.said().size() > 14 && grid.said().stream().allMatch(l -> l.length() < 60), grid.said().toString());
        });
        keepPicture("replace-narrow");
        assertEquals(before, files(), "nothing is written yet");
        press(dialog, "Replace");
        Map<String, String> after = files();
        assertTrue(after.get(DESIGN).contains("#staple-46") && !after.get(DESIGN).contains("#staple-47\""));
        settle();
        for (boolean inTree : new boolean[] { false, true }) { // in the drawer, where it was done, as well
            if (inTree) {
                ui(() -> page().showView("culm.workbench.studio").setFocus());
            }
            command("org.eclipse.ui.edit.undo");
            assertEquals(before, files());
            command("org.eclipse.ui.edit.redo");
            assertEquals(after, files());
        }
    }

    @Test
    void whatIsWrongWithAPartIsSaidInTheUnit() throws Exception {
        Files.writeString(folder.resolve(FILE), text(FILE).replace("name=\"topWide\" value=\"3.4\"", "name=\"topWide\" value=\"33\""));
        parts("staple-47");
        assertTrue(ui(() -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().contains("33 is outside 0.5 to 15 mm."))));
        inThousandths(() -> assertTrue(ui(() -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().contains("1299.2 is outside 19.7 to 590.6 thou.")))));
    }

    @Test
    void theVerdictsOfAReplacementFollowTheUnit() throws Exception {
        Files.writeString(folder.resolve(DESIGN), text(DESIGN).replace("<length value=\"72\"", "<length value=\"75\""));
        parts("staple-47");
        inThousandths(() -> {
            Shell dialog = dialog("culm.sharing.replace", "Replace 47, class set");
            try {
                until("every design is looked at", () -> find(dialog, org.eclipse.swt.widgets.Button.class).stream().anyMatch(b -> b.getText().equals("Replace") && b.isEnabled()));
                List<String> said = ui(() -> find(dialog, PreviewGrid.class).get(0).said());
                assertTrue(said.stream().anyMatch(l -> l.contains(" thou")) && said.stream().noneMatch(l -> l.contains(" mm")), said.toString());
            } finally {
                press(dialog, "Cancel");
            }
        });
    }

    @Test
    void partsThatAreThereTwiceAreFound() throws Exception {
        String text = text(FILE);
        String staple = text.substring(text.indexOf("  <staple id=\"staple-46\">"), text.indexOf("  <staple id=\"staple-47-places\">"));
        Files.writeString(folder.resolve(FILE), text.replace(staple, staple + staple.replace("staple-46", "again").replace("46, one of the short ones", "46 from the box")));
        Files.writeString(folder.resolve(DESIGN), text(DESIGN).replace("#staple-47\"", "#again\""));
        Shell dialog = dialog("culm.sharing.duplicates", "Parts that are there twice");
        until("they are found", () -> find(dialog, LinkText.class).stream().anyMatch(l -> l.words().startsWith("use 46, one of the short ones instead")));
        keepPicture("twice");
        press(dialog, "Close");
    }
}
