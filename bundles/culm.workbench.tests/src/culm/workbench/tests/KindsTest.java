package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.LinkText;

/** A part of another kind begins as the part was. */
class KindsTest extends StudioTest {
    /** What hundredths of a mm at the staple's top can move the closing by. */
    private static final double ROUNDING = 0.09;

    private double closes(DesignEditor editor) throws Exception {
        return ui(() -> session(editor).shown().assessment().orElseThrow().sidesCloseAt().getAsDouble());
    }

    @Test
    void measuredPlacesBeginAsTheStapleIs() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        String before = ui(() -> session(editor).text());
        double closed = closes(editor);
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> "Staple".equals(l.getData("culm.more"))).findFirst().orElseThrow().click());
        ui(() -> {
            Combo combo = find(window().getShell(), Combo.class).stream().filter(c -> "kind of staple".equals(c.getData("culm.choice"))).findFirst().orElseThrow();
            combo.select(combo.indexOf("measured places"));
            combo.notifyListeners(org.eclipse.swt.SWT.Selection, new Event());
        });
        shown(editor);
        assertEquals("culm.staple.measured", ui(() -> session(editor).blank().orElseThrow().blank().staple().type().id()));
        assertEquals(closed, closes(editor), ROUNDING);
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> session(editor).text()));
    }
}
