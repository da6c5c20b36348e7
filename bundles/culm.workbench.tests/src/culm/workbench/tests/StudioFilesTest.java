package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.studio.Node;
import culm.workbench.internal.studio.StudioView;

/** What is done with the studio's files: copied, renamed, removed, and each taken back and done again. */
class StudioFilesTest extends StudioTest {

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().isPresent()
                && Workshop.of(workbench()).studio().index().get().entries().stream().anyMatch(e -> e.file().startsWith(folder)));
    }

    private StudioView view() throws Exception {
        return (StudioView) page().showView(StudioView.ID);
    }

    private void choose(String file) throws Exception {
        ui(() -> {
            StudioEntry entry = Workshop.of(workbench()).studio().index().get().entries().stream().filter(e -> e.shown().equals(file)).findFirst().orElseThrow();
            view().reveal(entry);
        });
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.filter(Files::isRegularFile).filter(p -> !p.toString().endsWith(".bak") && !p.toString().endsWith(".open") && !p.getFileName().toString().startsWith(".culm")).toList()) {
                all.put(folder.relativize(path).toString(), Files.readString(path));
            }
        }
        return all;
    }

    private void name(Shell dialog, String name) throws Exception {
        ui(() -> find(dialog, Text.class).get(0).setText(name));
        press(dialog, "OK");
    }

    /** Takes back what was just done, and does it again; both leave just the files that were there then. */
    private void undoAndRedo(Map<String, String> before) throws Exception {
        Map<String, String> after = files();
        assertFalse(before.equals(after));
        ui(() -> view().setFocus());
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, files());
        command("org.eclipse.ui.edit.redo");
        assertEquals(after, files());
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, files());
    }

    @Test
    void aDesignIsCopied() throws Exception {
        Map<String, String> before = files();
        choose("trial-12.reed");
        name(dialog("culm.studio.copy", "Copy"), "Trial 12, narrower");
        assertTrue(files().get("trial-12-narrower.reed").contains("<name>Trial 12, narrower</name>"));
        ui(() -> page().closeAllEditors(false));
        undoAndRedo(before);
    }

    @Test
    void undoInADialogDoesNotReachTheFilesBehindIt() throws Exception {
        choose("trial-12.reed");
        name(dialog("culm.studio.copy", "Copy"), "Trial 12, narrower");
        ui(() -> view().setFocus());
        choose("trial-9-open.reed");
        Map<String, String> before = files();
        Shell asked = dialog("culm.studio.rename", "Rename");
        ui(() -> {
            asked.forceActive();
            find(asked, Text.class).get(0).setFocus();
        });
        until("the dialog is in front", () -> display().getActiveShell() == asked);
        ui(() -> window().getService(org.eclipse.ui.handlers.IHandlerService.class).executeCommand("org.eclipse.ui.edit.undo", null));
        assertEquals(before, files());
        press(asked, "Cancel");
    }

    @Test
    void aRenamedPartsFileTakesItsLinksAlong() throws Exception {
        Map<String, String> before = files();
        choose("harbour-row.parts");
        name(dialog("culm.studio.rename", "Rename"), "Drawer");
        Map<String, String> after = files();
        assertTrue(after.containsKey("drawer.parts"));
        assertFalse(after.containsKey("harbour-row.parts"));
        assertTrue(after.get("trial-12.reed").contains("drawer.parts#"));
        assertFalse(after.get("trial-12.reed").contains("harbour-row.parts#"));
        undoAndRedo(before);
    }

    /** Whether a file is open, and the only one of these two. */
    private boolean openInsteadOf(String file, String other) {
        Opening opening = new Opening(page());
        return opening.editorOf(folder.resolve(file)).isPresent() && opening.editorOf(folder.resolve(other)).isEmpty();
    }

    private String chosen() throws Exception {
        return view().chosen().filter(Node.Entry.class::isInstance).map(n -> ((Node.Entry) n).entry().shown()).orElse("");
    }

    @Test
    void theEditorAndTheChosenRowGoAlongWithARenamedFile() throws Exception {
        open("trial-12.reed");
        Map<String, String> before = files();
        ui(() -> view().setFocus());
        choose("trial-12.reed");
        name(dialog("culm.studio.rename", "Rename"), "Harbour twelve");
        assertTrue(ui(() -> openInsteadOf("harbour-twelve.reed", "trial-12.reed")));
        assertSame(view(), ui(() -> page().getActivePart()));
        until("its row is chosen", () -> chosen().equals("harbour-twelve.reed"));
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, files());
        assertTrue(ui(() -> openInsteadOf("trial-12.reed", "harbour-twelve.reed")));
        until("its row is chosen", () -> chosen().equals("trial-12.reed"));
        command("org.eclipse.ui.edit.redo");
        assertTrue(ui(() -> openInsteadOf("harbour-twelve.reed", "trial-12.reed")));
    }

    @Test
    void undoOfACopyClosesItUnlessItWasChanged() throws Exception {
        Map<String, String> before = files();
        choose("trial-12.reed");
        name(dialog("culm.studio.copy", "Copy"), "Twin");
        Map<String, String> after = files();
        DesignEditor twin = (DesignEditor) ui(() -> page().getActiveEditor());
        shown(twin);
        type(twin, "tie.length", "71");
        ui(() -> view().setFocus());
        display().asyncExec(() -> Workshop.of(workbench()).studio().steps().undo());
        press(shell("That cannot be taken back"), "OK");
        assertEquals(after, files());
        ui(() -> twin.session().undo());
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, files());
        assertTrue(ui(() -> page().findEditor(new FileInput(folder.resolve("twin.reed"))) == null));
    }

    @Test
    void aChangedDesignIsSavedBeforeItIsRenamedOrLeftAsItIs() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        type(editor, "tie.length", "71");
        Map<String, String> before = files();
        choose("trial-12.reed");
        name(dialog("culm.studio.rename", "Rename"), "Harbour twelve");
        Shell asked = shell("Save Harbour Row, trial 12");
        assertTrue(ui(() -> find(asked, org.eclipse.swt.widgets.Label.class).stream().anyMatch(l -> l.getText().contains("before it is renamed?"))));
        press(asked, "Cancel");
        settle();
        assertEquals(before, files());
        name(dialog("culm.studio.rename", "Rename"), "Harbour twelve");
        press(shell("Save Harbour Row, trial 12"), "Save");
        until("it is renamed", () -> openInsteadOf("harbour-twelve.reed", "trial-12.reed"));
        assertTrue(text("harbour-twelve.reed").contains("value=\"71\""));
    }

    @Test
    void whatComesIntoThePlaceOfARemovedFileIsChosen() throws Exception {
        choose("trial-9-open.reed");
        command("culm.studio.remove");
        until("another row is chosen", () -> !chosen().isEmpty() && !chosen().equals("trial-9-open.reed"));
        ui(() -> view().setFocus());
        command("org.eclipse.ui.edit.undo");
        until("it is chosen again", () -> chosen().equals("trial-9-open.reed"));
    }

    @Test
    void stepsOfAnotherFolderAreForgotten() throws Exception {
        choose("trial-9-open.reed");
        command("culm.studio.remove");
        Map<String, String> after = files();
        Path other = Files.createDirectory(folder.resolve("other"));
        ui(() -> Workshop.of(workbench()).studio().open(other));
        ui(() -> view().setFocus());
        command("org.eclipse.ui.edit.undo");
        assertEquals(after, files());
    }

    @Test
    void whatIsRemovedIsKeptAside() throws Exception {
        Map<String, String> before = files();
        choose("trial-9-open.reed");
        command("culm.studio.remove");
        Map<String, String> after = files();
        assertFalse(after.containsKey("trial-9-open.reed"));
        assertTrue(after.entrySet().stream().anyMatch(e -> e.getKey().startsWith(".removed") && e.getValue().equals(before.get("trial-9-open.reed"))));
        undoAndRedo(before);
    }

    @Test
    void everyNameFitsItsColumnAndIsWholeUnderThePointer() throws Exception {
        until("the verdicts are known", () -> view().viewer().getTree().getItems()[0].getItems()[0].getText(1).length() > 0);
        ui(() -> {
            view().viewer().expandAll();
            Tree tree = view().viewer().getTree();
            for (TreeItem group : tree.getItems()) {
                check(tree, group);
            }
            view().viewer().collapseAll();
        });
    }

    @Test
    void theWholeNameAndTheVerdictAreToldUnderThePointer() throws Exception {
        until("the verdicts are known", () -> view().viewer().getTree().getItems()[0].getItems()[0].getText(1).length() > 0);
        ui(() -> {
            Tree tree = view().viewer().getTree();
            TreeItem cut = Stream.of(tree.getItems()[0].getItems()).filter(i -> i.getText(0).contains("…")).findFirst().orElseThrow();
            pointer(tree, SWT.MouseEnter, cut);
            pointer(tree, SWT.MouseHover, cut);
        });
        until("it is told", () -> told().anyMatch(t -> t.startsWith("Harbour Row, English horn 3\n") && t.contains(": sides close with ")));
        ui(() -> pointer(view().viewer().getTree(), SWT.MouseExit, view().viewer().getTree().getItem(0)));
    }

    @Test
    void theMenuIsMadeWhenItIsAskedForAndOffersWhatCanBeDone() throws Exception {
        List<String> offered = ui(() -> {
            Tree tree = view().viewer().getTree();
            tree.notifyListeners(SWT.MenuDetect, new Event());
            Menu once = tree.getMenu();
            tree.notifyListeners(SWT.MenuDetect, new Event());
            assertSame(once, tree.getMenu());
            once.notifyListeners(SWT.Show, new Event());
            List<String> words = Stream.of(once.getItems()).map(MenuItem::getText).toList();
            once.notifyListeners(SWT.Hide, new Event());
            return words;
        });
        assertTrue(offered.stream().anyMatch(t -> t.contains("Rename")), offered.toString());
        assertTrue(offered.stream().anyMatch(t -> t.contains("Copy")), offered.toString());
    }

    private static void pointer(Tree tree, int type, TreeItem item) {
        Event event = new Event();
        event.x = item.getBounds(0).x + 20;
        event.y = item.getBounds(0).y + 5;
        tree.notifyListeners(type, event);
    }

    private Stream<String> told() {
        return Stream.of(display().getShells()).filter(s -> s.isVisible() && s != window().getShell()).flatMap(s -> find(s, CLabel.class).stream()).map(CLabel::getText);
    }

    private static void check(Tree tree, TreeItem item) {
        int right = item.getTextBounds(0).x + width(tree, item.getText(0));
        assertTrue(right <= tree.getColumn(0).getWidth(), item.getText(0) + " ends at " + right);
        assertTrue(item.getText(0).length() > 4, item.getText(0));
        for (TreeItem below : item.getItems()) {
            check(tree, below);
        }
    }

    private static int width(Tree tree, String text) {
        GC gc = new GC(tree);
        try {
            gc.setFont(tree.getFont());
            return gc.stringExtent(text).x;
        } finally {
            gc.dispose();
        }
    }

    /** What stands beside a design; nothing while the tree does not show it yet. */
    private String beside(String name) throws Exception {
        return Stream.of(view().viewer().getTree().getItems()[0].getItems()).filter(i -> i.getText(0).endsWith(name)).map(i -> i.getText(1)).findFirst().orElse("");
    }

    @Test
    void aDesignThatCannotBeToldIsNotCalledOpen() throws Exception {
        until("the verdicts are known", () -> beside("trial 9").equals("open"));
        Files.writeString(folder.resolve("trial-12.reed"), text("trial-12.reed").replace("#staple-47\"", "#lost\""));
        ui(() -> Workshop.of(workbench()).studio().refresh());
        until("a lost part leaves a question", () -> beside("trial 12").equals("?"));
    }

    @Test
    void aDesignWhoseTypeIsMissingIsNotCalledOpen() throws Exception {
        Path example = Path.of(System.getProperty("culm.examples"), "culm.example.plugin", "example.reed");
        Files.writeString(folder.resolve("example.reed"), Files.readString(example));
        ui(() -> Workshop.of(workbench()).studio().refresh());
        until("its verdict is known", () -> !beside("staple").isEmpty());
        assertEquals("?", ui(() -> beside("staple")));
    }

    @Test
    void aRemovalIsAskedInWords() throws Exception {
        choose("harbour-row.parts");
        display().asyncExec(() -> new culm.workbench.internal.studio.StudioActions(window()).remove());
        Shell asked = shell("Remove Harbour Row, the drawer of parts");
        assertTrue(ui(() -> find(asked, org.eclipse.swt.widgets.Label.class).stream().anyMatch(l -> l.getText().startsWith("Remove Harbour Row, the drawer of parts? ")
                && l.getText().contains(".removed") && l.getText().contains("Undo"))));
        press(asked, "Cancel");
    }

    @Test
    void theSearchFindsDesignsAndParts() throws Exception {
        command("culm.studio.find");
        ui(() -> ((Text) display().getFocusControl()).setText("horn"));
        settle();
        int found = ui(() -> view().viewer().getVisibleExpandedElements().length);
        ui(() -> find(view().viewer().getTree().getParent().getParent(), Text.class).get(0).setText(""));
        int all = ui(() -> view().viewer().getTree().getItems()[0].getItemCount());
        assertTrue(found > 0);
        assertTrue(all >= 8);
        assertEquals(1, ui(() -> {
            find(view().viewer().getTree().getParent().getParent(), Text.class).get(0).setText("English horn 3");
            return view().viewer().getTree().getItems()[0].getItemCount();
        }));
        ui(() -> find(view().viewer().getTree().getParent().getParent(), Text.class).get(0).setText(""));
    }

    @Test
    void limitsAreSavedForTheStudioAndFollowed() throws Exception {
        var editor = open("trial-12.reed");
        Shell dialog = dialog("culm.design.limits", "My limits");
        keepPicture("my-limits");
        fill(dialog, "turnsWanted", "3");
        fill(dialog, "turnsMost", "4");
        fill(dialog, "turnsFewest", "2");
        press(dialog, "OK");
        shown(editor);
        until("the limits are followed", () -> session(editor).shown().findings().stream().anyMatch(f -> f.rule().equals("turnsLeft") && f.text().contains("allowed 2 to 4")));
        assertTrue(Files.exists(folder.resolve("studio.limits")));
    }
}
