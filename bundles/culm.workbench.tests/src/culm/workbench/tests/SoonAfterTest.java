package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.SoonAfter;

/** What takes long to make stands after everything around it was painted, or when it is asked for. */
class SoonAfterTest extends StudioTest {
    private final List<String> told = new ArrayList<>();
    private Shell shell;

    @BeforeEach
    void openShell() throws Exception {
        ui(() -> {
            shell = new Shell(display());
            shell.setLayout(new FillLayout());
            shell.setSize(200, 100);
        });
    }

    @AfterEach
    void closeShell() throws Exception {
        ui(() -> shell.dispose());
    }

    private SoonAfter<Label> place() {
        return new SoonAfter<>(shell, parent -> new Label(parent, SWT.NONE), () -> told.add("made"));
    }

    @Test
    void isMadeAfterTheFirstPainting() throws Exception {
        SoonAfter<Label> place = ui(this::place);
        assertTrue(ui(() -> place.ifMade().isEmpty()));
        ui(() -> shell.open());
        until("it is made", () -> place.ifMade().isPresent());
        assertEquals(ui(() -> place.getSize()), ui(() -> place.get().getSize()));
        assertEquals(List.of("made"), told);
    }

    @Test
    void isMadeWhenAskedForAndOnlyOnce() throws Exception {
        ui(() -> {
            SoonAfter<Label> place = place();
            Label first = place.get();
            assertEquals(first, place.get());
        });
        assertEquals(List.of("made"), told);
    }

    @Test
    void isNotMadeAnymoreWhenTheWindowIsGone() throws Exception {
        ui(() -> {
            place().notifyListeners(SWT.Paint, new Event());
            shell.dispose();
        });
        settle();
        assertEquals(List.of(), told);
    }

    @Test
    void refusesToBeAskedForWhileItIsMade() throws Exception {
        ui(() -> {
            List<SoonAfter<Label>> places = new ArrayList<>();
            places.add(new SoonAfter<>(shell, parent -> places.get(0).get(), () -> told.add("made")));
            assertThrows(IllegalStateException.class, () -> places.get(0).get());
        });
    }

    @Test
    void theFormOfADesignTakesTheFocusOnceItStands() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        until("the first number has the focus", () -> {
            page().activate(editor);
            return display().getFocusControl() != null && isWithin(editor.form(), display().getFocusControl());
        });
    }

    private static boolean isWithin(Composite parent, Control control) {
        Control at = control;
        while (at != null && at != parent) {
            at = at.getParent();
        }
        return at == parent;
    }
}
