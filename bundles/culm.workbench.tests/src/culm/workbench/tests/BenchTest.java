package culm.workbench.tests;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;

import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.log.LogEditor;

/** What the tests of the bench share: opening its files, typing into its tables as a caliper does. */
abstract class BenchTest extends StudioTest {

    /** Opens the copied studio in the window, as new files need it. */
    final void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().filter(i -> i.entries().stream().anyMatch(e -> e.file().startsWith(folder))).isPresent());
    }

    final BatchEditor openBatch(String name) throws Exception {
        BatchEditor editor = (BatchEditor) opened(folder.resolve(name));
        until("the batch is split", () -> !editor.pending());
        return editor;
    }

    final LogEditor openLog(String name) throws Exception {
        LogEditor editor = (LogEditor) opened(folder.resolve(name));
        shown(editor);
        return editor;
    }

    final void shown(LogEditor editor) throws Exception {
        until("the log is shown", () -> !editor.pending());
    }

    private IEditorPart opened(Path file) throws Exception {
        return ui(() -> new Opening(page()).open(file).orElseThrow());
    }

    /** An empty batch for the design that fits. */
    final BatchEditor newBatch() throws Exception {
        Files.writeString(folder.resolve("new.batch"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <batch format="1" id="new">
                  <name>New box (invented)</name>
                  <design>trial-14.reed</design>
                </batch>
                """);
        return openBatch("new.batch");
    }

    /** Types into the current cell and presses Enter, as a caliper does. */
    final void caliper(Grid grid, String... values) throws Exception {
        for (String value : values) {
            ui(() -> {
                StyledText cell = cell(grid);
                cell.setFocus();
                cell.setText(value);
                enter(cell);
            });
        }
    }

    /** The field over the current cell; asked on the workbench's thread. */
    static StyledText cell(Grid grid) {
        return find(grid, StyledText.class).get(0);
    }

    /** The field of a form; asked on the workbench's thread. @param path what it stands for */
    final StyledText field(String path) {
        return find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst().orElseThrow();
    }

    /** Types into a field of a form and presses Enter. */
    final void write(String path, String text) throws Exception {
        ui(() -> {
            StyledText field = field(path);
            field.setFocus();
            field.setText(text);
            enter(field);
        });
    }

    /** Presses Enter; on the workbench's thread. */
    static void enter(Control control) {
        Event enter = new Event();
        enter.detail = SWT.TRAVERSE_RETURN;
        enter.doit = true;
        control.notifyListeners(SWT.Traverse, enter);
    }

    /** Puts a text onto the clipboard and pastes it into the current cell. */
    final void paste(Grid grid, String text) throws Exception {
        ui(() -> {
            Clipboard clipboard = new Clipboard(display());
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
            cell(grid).setFocus();
        });
        command("org.eclipse.ui.edit.paste");
    }
}
