package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.XMLMemento;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.form.ParameterForm;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.undo.UndoTarget;

/** A design that was open the last time stands after the window does, with no click, and as every other; one that cannot be read is told quietly. */
class RememberedDesignTest extends StudioTest {

    /** Opened as the platform opens what was open the last time; on the workbench's thread. */
    private DesignEditor remembered(String name) throws Exception {
        XMLMemento memory = XMLMemento.createWriteRoot("input");
        new FileInput(folder.resolve(name)).saveState(memory);
        return (DesignEditor) page().openEditor(new FileInput.Factory().createElement(memory), DesignEditor.ID);
    }

    private List<ParameterForm> forms() {
        return find(window().getShell(), ParameterForm.class);
    }

    @Test
    void standsSoonAfterWithNoClickAndTakesTheFocus() throws Exception {
        ui(() -> {
            remembered("trial-12.reed");
            assertEquals(List.of(), forms());
        });
        until("the reed is drawn", () -> find(window().getShell(), Control.class).stream()
                .anyMatch(c -> c instanceof Figure figure && figure.title().equals("Reed") && c.isVisible() && figure.onScreen().isPresent()));
        until("the form stands", () -> !forms().isEmpty());
        until("a number has the focus", () -> {
            window().getShell().forceActive();
            Control focus = display().getFocusControl();
            return focus != null && focus.getData("culm.path") != null;
        });
        assertEquals(ui(() -> session((DesignEditor) page().getActiveEditor()).name()), ui(() -> page().getActiveEditor().getTitle()));
    }

    @Test
    void isThereAtOnceWhenItIsAskedFor() throws Exception {
        DesignEditor editor = ui(() -> {
            DesignEditor now = remembered("trial-12.reed");
            assertTrue(now.form().isVisible());
            assertTrue(now.getAdapter(UndoTarget.class).undoLabel().isEmpty());
            return now;
        });
        shown(editor);
        double before = value(editor, "tie.length");
        type(editor, "tie.length", Double.toString(before + 1));
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, value(editor, "tie.length"));
    }

    @Test
    void isClosedBeforeItStands() throws Exception {
        ui(() -> page().closeEditor(remembered("trial-12.reed"), false));
        settle();
        assertEquals(List.of(), ui(this::forms));
        assertEquals(0, ui(() -> page().getEditorReferences().length));
    }

    @Test
    void saysWhatIsWrongWithItsFile() throws Exception {
        Files.writeString(folder.resolve("trial-12.reed"), "this is no design");
        IEditorPart editor = ui(() -> remembered("trial-12.reed"));
        until("the editor is closed", () -> page().findEditor(editor.getEditorInput()) == null);
        until("it is said", () -> said("trial-12.reed cannot be opened: line 1: "));
        keepPicture("cannot-be-opened");
        assertEquals(1, ui(() -> Stream.of(display().getShells()).filter(Shell::isVisible).count()), "no dialog holds up the window");
        assertEquals("this is no design", text("trial-12.reed"));
        click("dismiss");
        assertFalse(ui(() -> said("cannot be opened")));
    }

    @Test
    void nothingIsSaidAnyMoreOnceItOpens() throws Exception {
        String good = text("trial-12.reed");
        Files.writeString(folder.resolve("trial-12.reed"), "this is no design");
        IEditorPart editor = ui(() -> remembered("trial-12.reed"));
        until("it is closed and said", () -> page().findEditor(editor.getEditorInput()) == null && said("trial-12.reed cannot be opened"));
        Files.writeString(folder.resolve("trial-12.reed"), good);
        open("trial-12.reed");
        assertFalse(ui(() -> said("cannot be opened")));
    }
}
