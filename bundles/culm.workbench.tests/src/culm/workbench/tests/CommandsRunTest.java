package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import culm.blank.Inputs;
import culm.workbench.internal.editor.DesignEditor;

/** Every command of a design that asks nothing: run in the window; what it changes is taken back and done again, and nothing is logged. */
class CommandsRunTest extends StudioTest {
    /** Those that change the design; all others leave it alone. */
    private static final List<String> CHANGE = List.of("culm.design.fix", "culm.design.measured");

    static Stream<String> commands() {
        return Stream.of(Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.commands"))
                .filter(e -> e.getName().equals("command") && e.getContributor().getName().equals("culm.workbench"))
                .filter(e -> e.getAttribute("id").startsWith("culm.design.") && !e.getAttribute("name").endsWith("…"))
                .map(e -> e.getAttribute("id"));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void doneTakenBackAndDoneAgain(String id) throws Exception {
        List<IStatus> logged = new ArrayList<>();
        ILogListener listener = (status, plugin) -> logged.add(status);
        Platform.addLogListener(listener);
        try {
            DesignEditor editor = open("trial-8-overwrapped.reed");
            ui(() -> field(editor, Inputs.TIE_LENGTH).setFocus());
            String before = ui(() -> session(editor).text());
            command(id);
            shown(editor);
            String after = ui(() -> session(editor).text());
            assertEquals(CHANGE.contains(id), !before.equals(after), id + " changes the design");
            assertEquals(CHANGE.contains(id), ui(editor::isDirty));
            if (CHANGE.contains(id)) {
                assertTrue(ui(() -> session(editor).undoLabel()).isPresent(), "it is named in the menu");
                command("org.eclipse.ui.edit.undo");
                assertEquals(before, ui(() -> session(editor).text()));
                assertFalse(ui(editor::isDirty));
                command("org.eclipse.ui.edit.redo");
                assertEquals(after, ui(() -> session(editor).text()));
            }
            ui(() -> editor.showPage(DesignEditor.Page.REED));
            settle();
        } finally {
            Platform.removeLogListener(listener);
        }
        assertEquals(List.of(), logged);
    }
}
