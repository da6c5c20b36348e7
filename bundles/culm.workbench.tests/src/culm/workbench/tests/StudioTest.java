package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

import culm.figures.Drawing;
import culm.figures.Handle;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NoticeBar;

/** Base of tests that work in a copy of the example studio. */
abstract class StudioTest extends WorkbenchTest {
    @TempDir
    Path folder;

    @BeforeEach
    final void copyStudio() throws IOException {
        Path examples = Path.of(System.getProperty("culm.examples"), "studio");
        try (Stream<Path> all = Files.list(examples)) {
            for (Path file : all.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
    }

    @AfterEach
    final void closeEditors() throws Exception {
        ui(() -> page().closeAllEditors(false));
        settle();
    }

    /** Opens a design of the studio and waits until all of it is shown. */
    final DesignEditor open(String name) throws Exception {
        DesignEditor editor = ui(() -> (DesignEditor) page().openEditor(new FileInput(folder.resolve(name)), DesignEditor.ID));
        shown(editor);
        return editor;
    }

    /** Waits until an editor shows what its design is. */
    final void shown(DesignEditor editor) throws Exception {
        until("the editor shows its design", () -> !session(editor).pending());
    }

    static DesignSession session(DesignEditor editor) {
        return editor.getAdapter(DesignSession.class);
    }

    /** The field of an input; asked on the workbench's thread. */
    final StyledText field(DesignEditor editor, String path) {
        return find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst()
                .orElseThrow(() -> new AssertionError("no field for " + path));
    }

    /** Types a number into a field and presses Enter. */
    final void type(DesignEditor editor, String path, String text) throws Exception {
        ui(() -> {
            StyledText field = field(editor, path);
            field.setFocus();
            field.setText(text);
            Event enter = new Event();
            enter.detail = SWT.TRAVERSE_RETURN;
            enter.doit = true;
            field.notifyListeners(SWT.Traverse, enter);
        });
        shown(editor);
    }

    /** A drawing of the editor by its title; asked on the workbench's thread. */
    final Canvas figure(String title) {
        return find(window().getShell(), Canvas.class).stream().filter(c -> c instanceof Figure f && f.title().equals(title)).findFirst()
                .orElseThrow(() -> new AssertionError("no drawing called " + title));
    }

    /** Where a handle of the reed is on its canvas; asked on the workbench's thread. */
    final Point handle(String id) {
        Canvas canvas = figure("Reed");
        Drawing drawing = ((Figure) canvas).onScreen().orElseThrow();
        double left = Math.max(0, (canvas.getClientArea().width - drawing.width()) / 2);
        Handle handle = drawing.handles().stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError("no handle " + id));
        return new Point((int) Math.round(handle.x() + left), (int) Math.round(handle.y()));
    }

    /** Sends a mouse event to a control; on the workbench's thread. */
    static void mouse(Control control, int type, int x, int y) {
        Event event = new Event();
        event.button = type == SWT.MouseMove ? 0 : 1;
        event.x = x;
        event.y = y;
        control.notifyListeners(type, event);
    }

    /** Sends a key to a control; on the workbench's thread. */
    static void key(Control control, int code, int mask) {
        Event event = new Event();
        event.keyCode = code;
        event.stateMask = mask;
        event.doit = true;
        control.notifyListeners(SWT.KeyDown, event);
    }

    /** The value of an input in the design itself. */
    final double value(DesignEditor editor, String path) throws Exception {
        return ui(() -> session(editor).blank().orElseThrow().blank().value(path).getAsDouble());
    }

    /** Begins a command that opens a dialog, and waits for the dialog. */
    final Shell dialog(String command, String title) throws Exception {
        choosable(command);
        display().asyncExec(() -> {
            try {
                window().getService(org.eclipse.ui.handlers.IHandlerService.class).executeCommand(command, null);
            } catch (org.eclipse.core.commands.common.CommandException e) {
                throw new IllegalStateException(command, e);
            }
        });
        return shell(title);
    }

    /** Waits for a dialog. */
    final Shell shell(String title) throws Exception {
        until("the dialog " + title + " is open", () -> visible(title).isPresent());
        return ui(() -> visible(title).orElseThrow());
    }

    private Optional<Shell> visible(String title) {
        return Stream.of(display().getShells()).filter(s -> s.getText().equals(title) && s.isVisible()).findFirst();
    }

    /** Clicks a link, wherever it is; what it does may open a dialog. */
    final void click(String words) throws Exception {
        ui(() -> {
            LinkText link = links().filter(l -> l.words().equals(words)).findFirst().orElseThrow(() -> new AssertionError("nothing says " + words));
            display().asyncExec(link::click);
        });
        ui(() -> { }); // comes after it
    }

    /** Whether a notice says something; asked on the workbench's thread. */
    final boolean said(String words) {
        return find(window().getShell(), NoticeBar.class).stream().anyMatch(n -> n.sentence().contains(words));
    }

    private Stream<LinkText> links() {
        return Stream.of(display().getShells()).filter(Shell::isVisible).flatMap(s -> find(s, LinkText.class).stream()).filter(LinkText::isVisible);
    }

    /** Types into a field of a dialog. */
    final void fill(Shell dialog, String asked, String text) throws Exception {
        ui(() -> find(dialog, Text.class).stream().filter(t -> asked.equals(t.getData("culm.ask"))).findFirst()
                .orElseThrow(() -> new AssertionError("nothing asks for " + asked)).setText(text));
    }

    /** Presses a button of a dialog, or chooses a radio button. */
    final void press(Shell dialog, String words) throws Exception {
        ui(() -> {
            List<Button> group = find(dialog, Button.class);
            Button button = group.stream().filter(b -> b.getText().replace("&", "").equals(words)).findFirst()
                    .orElseThrow(() -> new AssertionError("no button " + words));
            assertTrue(button.isEnabled(), words + " can be pressed");
            if ((button.getStyle() & SWT.RADIO) != 0) {
                group.stream().filter(b -> b.getParent() == button.getParent() && (b.getStyle() & SWT.RADIO) != 0).forEach(b -> b.setSelection(b == button));
            }
            // Not from here: what it does may open a dialog of its own.
            display().asyncExec(() -> button.notifyListeners(SWT.Selection, new Event()));
        });
        ui(() -> { }); // comes after it
    }

    /** Runs a command of the menus. */
    final void command(String id) throws Exception {
        choosable(id);
        ui(() -> window().getService(org.eclipse.ui.handlers.IHandlerService.class).executeCommand(id, null));
    }

    /** Does something while lengths are shown in thousandths of an inch; whatever comes of it, they are shown in mm afterwards. */
    final void inThousandths(Action todo) throws Exception {
        command("culm.window.thou");
        try {
            todo.run();
        } finally {
            command("culm.window.mm");
        }
    }

    private void choosable(String id) throws Exception {
        ui(() -> window().getShell().forceActive());
        until(id + " can be chosen", () -> window().getService(org.eclipse.ui.commands.ICommandService.class).getCommand(id).isEnabled());
    }

    /** All controls of a kind below another. */
    static <T extends Control> List<T> find(Composite below, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Control child : below.getChildren()) {
            if (kind.isInstance(child)) {
                found.add(kind.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(find(composite, kind));
            }
        }
        return found;
    }

    final String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }
}
