package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.junit.jupiter.api.Test;

import culm.blank.rules.Fix;
import culm.blank.rules.Severity;
import culm.figures.Role;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.RowsList;

/** What is proposed helps, and can be taken back. */
class FindingsTest extends StudioTest {

    @Test
    void aFixFoundBySolvingIsAppliedAndHelps() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        String before = ui(() -> session(editor).text());
        assertTrue(ui(() -> session(editor).shown().findings().stream().anyMatch(f -> f.severity() == Severity.ERROR)));
        Fix fix = ui(() -> session(editor).shown().findings().stream().flatMap(f -> f.fix().stream()).findFirst().orElseThrow());
        command("culm.design.fix");
        shown(editor);
        assertEquals(fix.value(), value(editor, fix.path()), 1e-9);
        assertTrue(ui(() -> session(editor).shown().findings().stream().noneMatch(f -> f.severity() == Severity.ERROR)));
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> session(editor).text()));
    }

    @Test
    void theNextOneBeginsWithTheWorstAndIsToldAsLongAsItHolds() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        RowsList list = ui(() -> find(window().getShell(), RowsList.class).stream().filter(l -> l.getClass().getSimpleName().equals("FindingsList")).findFirst().orElseThrow());
        command("culm.design.finding");
        String worst = ui(() -> session(editor).shown().findings().get(0).text());
        assertTrue(ui(list::spoken).endsWith(worst), ui(list::spoken));
        assertTrue(String.valueOf(status(editor)).endsWith(worst), status(editor));
        command("culm.design.fix");
        shown(editor);
        assertFalse(String.valueOf(status(editor)).endsWith(worst), "it holds no more");
    }

    @Test
    void whatTheStatusLineTellsGoesWithTheNextThingThatIsDone() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        Canvas reed = ui(() -> figure("Reed"));
        for (Consumer<Canvas> next : List.<Consumer<Canvas>>of(c -> mouse(c, SWT.MouseDown, 5, 5), c -> key(c, SWT.ESC, 0), c -> c.notifyListeners(SWT.Selection, new Event()))) {
            command("culm.design.finding");
            assertFalse(status(editor).isEmpty());
            ui(() -> next.accept(reed));
            assertEquals("", status(editor));
            ui(editor::setFocus);
            assertEquals("", status(editor), "nor does it come back");
        }
        command("culm.design.finding");
        ui(() -> key(reed, SWT.SHIFT, 0));
        assertFalse(status(editor).isEmpty(), "a key that is only held is nothing yet");
    }

    private String status(DesignEditor editor) throws Exception {
        return ui(() -> find(window().getShell(), org.eclipse.swt.custom.CLabel.class).stream().map(org.eclipse.swt.custom.CLabel::getText).filter(t -> !t.isEmpty()).findFirst().orElse(""));
    }

    @Test
    void whatIsChosenCanBeSeenWholeWhenItIsOpened() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        Point before = ui(() -> window().getShell().getSize());
        try {
            ui(() -> window().getShell().setSize(1280, 640));
            settle();
            RowsList list = ui(() -> find(window().getShell(), RowsList.class).stream().filter(l -> l.getClass().getSimpleName().equals("FindingsList")).findFirst().orElseThrow());
            assertTrue(ui(list::spoken).contains("more below"), ui(list::spoken));
            ui(() -> {
                list.setFocus();
                for (int i = 0; i < session(editor).shown().findings().size(); i++) {
                    key(list, SWT.ARROW_DOWN, 0);
                }
                key(list, SWT.ARROW_RIGHT, 0);
            });
            settle();
            ui(() -> {
                Rectangle area = list.getClientArea();
                ImageData data = picture(list);
                RGB frame = Workshop.of(workbench()).look().colour(Role.THREAD).getRGB();
                assertTrue(IntStream.range(area.height / 2, area.height).anyMatch(y -> data.palette.getRGB(data.getPixel(area.width / 2, y)).equals(frame)), "the lower edge of what is chosen");
            });
        } finally {
            ui(() -> window().getShell().setSize(before));
        }
    }

    @Test
    void noScrollBarIsShownWhereItDoesNotFit() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        ui(() -> {
            editor.nextFinding();
            Canvas list = (Canvas) display().getFocusControl();
            list.setSize(500, 90);
            assertTrue(list.getVerticalBar().getVisible());
            List<Boolean> squeezed = new ArrayList<>();
            Listener first = e -> squeezed.add(e.widget == list && list.getVerticalBar().getVisible());
            display().addFilter(SWT.Resize, first);
            try {
                list.setSize(500, 40);
            } finally {
                display().removeFilter(SWT.Resize, first);
            }
            assertFalse(list.getVerticalBar().getVisible());
            assertFalse(squeezed.contains(true), "it was there no more when the list became smaller");
            list.setSize(500, 90);
            assertTrue(list.getVerticalBar().getVisible());
        });
    }
}
