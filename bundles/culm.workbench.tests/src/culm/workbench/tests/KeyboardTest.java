package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.LinkText;

/** The Tab key goes through the editor and the dialogs as one reads them. */
class KeyboardTest extends StudioTest {
    private static final int ENOUGH = 120;
    private static final int SAME_LINE = 16;

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().isPresent());
    }

    /** What the Tab key comes to, from where the focus is until it is there again; it may stay in a drawing for some of its marks. */
    private List<Control> tabs() throws Exception {
        List<Control> seen = new ArrayList<>();
        for (int i = 0; i < ENOUGH; i++) {
            Control now = ui(() -> display().getFocusControl());
            if (seen.size() > 1 && now == seen.get(0)) {
                return seen;
            }
            assertTrue(now != null && (!seen.contains(now) || now == seen.get(seen.size() - 1)), now + " again, and not the first, after " + seen);
            if (!seen.contains(now)) {
                seen.add(now);
            }
            ui(() -> now.traverse(SWT.TRAVERSE_TAB_NEXT));
        }
        throw new AssertionError("it does not come back: " + seen);
    }

    @Test
    void throughTheDesignFromNumberToNumberToTheDrawingAndTheFindings() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        ui(() -> editor.form().focusFirst());
        List<Control> seen = tabs();
        ui(() -> {
            List<String> numbers = seen.stream().map(c -> c.getData("culm.path")).filter(Objects::nonNull).map(Object::toString).toList();
            List<String> asShown = find(editor.form(), StyledText.class).stream().filter(t -> t.getData("culm.path") != null && t.isVisible())
                    .sorted((a, b) -> a.toDisplay(0, 0).y - b.toDisplay(0, 0).y).map(t -> t.getData("culm.path").toString()).toList();
            assertEquals(asShown, numbers);
            assertTrue(numbers.indexOf(Inputs.TIE_LENGTH) < numbers.indexOf(Inputs.FINISHED), numbers.toString());
            int reed = seen.indexOf(figure("Reed"));
            assertTrue(reed > seen.indexOf(field(editor, Inputs.FINISHED)), "the drawing comes after the numbers");
            List<String> links = seen.stream().filter(LinkText.class::isInstance).map(c -> ((LinkText) c).words()).toList();
            assertTrue(links.containsAll(List.of("more", "Reed", "Graphs", "What changes if", "Explore")), seen.stream().map(KeyboardTest::words).toList().toString());
            assertTrue(seen.stream().allMatch(Control::isVisible));
            assertTrue(seen.stream().anyMatch(c -> (c.getStyle() & SWT.SEARCH) != 0), "the studio's search, " + seen.stream().map(KeyboardTest::words).toList());
        });
    }

    private static String words(Control control) {
        Object path = control.getData("culm.path");
        return control instanceof LinkText link ? "link " + link.words() : path != null ? path.toString() : control.getClass().getSimpleName() + " in " + control.getParent().getClass().getSimpleName();
    }

    @ParameterizedTest
    @CsvSource({"culm.design.limits, My limits", "culm.design.fit, Start from a blank that works", "culm.design.export, Write a drawing", "culm.studio.newDesign, New design"})
    void throughADialogFromTheTop(String command, String title) throws Exception {
        open("trial-12.reed");
        Shell dialog = dialog(command, title);
        try {
            List<Control> seen = tabs();
            assertTrue(seen.size() > 3, seen.toString());
            ui(() -> {
                List<Control> asked = seen.stream().filter(c -> !(c instanceof Button b && (b.getStyle() & SWT.PUSH) != 0)).toList();
                int backAtTheTop = 0;
                for (int i = 1; i < asked.size(); i++) {
                    Point before = asked.get(i - 1).toDisplay(0, 0);
                    Point after = asked.get(i).toDisplay(0, 0);
                    backAtTheTop += after.y > before.y + SAME_LINE || after.y > before.y - SAME_LINE && after.x > before.x ? 0 : 1;
                }
                assertTrue(backAtTheTop <= 1, title + ": up and down through " + asked);
                List<Button> missed = find(dialog, Button.class).stream().filter(b -> (b.getStyle() & SWT.PUSH) != 0 && b.isEnabled() && b.isVisible() && !seen.contains(b)).toList();
                assertEquals(List.of(), missed, title);
            });
        } finally {
            ui(dialog::close);
        }
    }
}
