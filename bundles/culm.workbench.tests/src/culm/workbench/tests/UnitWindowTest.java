package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.figures.Drawing;
import culm.figures.Text;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.widgets.LinkText;

/** Every drawing of an open design follows the unit that is chosen, on the screen and on paper. */
class UnitWindowTest extends StudioTest {

    private static String words(Drawing drawing) {
        StringBuilder all = new StringBuilder(drawing.title()).append('\n').append(drawing.description()).append('\n');
        drawing.flat().forEach(i -> {
            if (i instanceof Text t) {
                all.append(t.text()).append('\n');
            }
        });
        return all.toString();
    }

    private StyledText field(String path) {
        return find(window().getShell(), StyledText.class).stream().filter(t -> path.equals(t.getData("culm.path"))).findFirst().orElseThrow();
    }

    @Test
    void theDrawingsFollowTheUnit() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        List<Figure> figures = ui(() -> editor.figures());
        for (Figure figure : figures) {
            assertFalse(words(ui(() -> figure.onScreen().orElseThrow())).contains("thou"), figure.title());
        }
        command("culm.window.thou");
        try {
            for (Figure figure : figures) {
                for (Drawing drawing : List.of(ui(() -> figure.onScreen().orElseThrow()), ui(() -> figure.onPaper(2).orElseThrow()))) {
                    assertTrue(words(drawing).contains("thou"), figure.title());
                    assertFalse(words(drawing).contains("mm"), figure.title() + ": " + words(drawing));
                }
                assertFalse(ui(() -> figure.table().text()).contains("thou"), "a table stays in mm, as its head says");
            }
            keepPicture("thousandths");
            ui(() -> editor.showPage(DesignEditor.Page.GRAPHS));
            ui(() -> {
                Canvas along = figure("Graphs along the reed");
                mouse(along, SWT.MouseMove, along.getClientArea().width * 3 / 5, 80);
            });
            keepPicture("thousandths-graphs");
        } finally {
            command("culm.window.mm");
        }
        for (Figure figure : figures) {
            assertFalse(words(ui(() -> figure.onScreen().orElseThrow())).contains("thou"), figure.title());
        }
    }

    @Test
    void aPlaceInTheFormFollowsTheUnit() throws Exception {
        open("trial-12.reed");
        until("the form is there", () -> labels().contains("width at 26 mm"));
        command("culm.window.thou");
        try {
            assertTrue(ui(this::labels).contains("width at 1024 thou"), ui(this::labels).toString());
            keepPicture("thousandths-form");
        } finally {
            command("culm.window.mm");
        }
        assertTrue(ui(this::labels).contains("width at 26 mm"), ui(this::labels).toString());
    }

    @Test
    void whatIsTypedIsReadInTheUnitInWhichItWasTyped() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        ui(() -> {
            StyledText field = field("tie.length");
            field.setFocus();
            field.setText("71.2");
        });
        command("culm.window.thou");
        try {
            assertEquals(71.2, ui(() -> session(editor).blank().orElseThrow().blank().number(Inputs.TIE_LENGTH)), 1e-9);
            ui(() -> {
                StyledText field = field("tie.length");
                field.setFocus();
                field.setText("300"); // no tie length in thousandths, but one in mm would not be either
            });
            command("culm.window.mm");
            assertEquals("71.2\u2009mm", ui(() -> field("tie.length").getText()), "what cannot be is given back");
            assertEquals(71.2, ui(() -> session(editor).blank().orElseThrow().blank().number(Inputs.TIE_LENGTH)), 1e-9);
        } finally {
            command("culm.window.mm");
        }
    }

    @Test
    void anArrowKeyMovesAMarkByARoundStepOfTheUnit() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        Canvas canvas = ui(() -> figure("Reed"));
        double before = ui(() -> session(editor).blank().orElseThrow().blank().number(Inputs.WRAP_TOP));
        command("culm.window.thou");
        try {
            Point at = ui(() -> handle("wrapTop"));
            ui(() -> {
                mouse(canvas, SWT.MouseDown, at.x, at.y);
                mouse(canvas, SWT.MouseUp, at.x, at.y);
                key(canvas, SWT.ARROW_LEFT, 0);
                key(canvas, SWT.ARROW_LEFT, 0);
            });
            assertEquals(before - 2 * 0.0254, ui(() -> session(editor).blank().orElseThrow().blank().number(Inputs.WRAP_TOP)), 1e-6);
        } finally {
            command("culm.window.mm");
        }
    }

    @Test
    void helpGivesItsLengthsInTheUnit() throws Exception {
        open("trial-12.reed");
        ui(() -> field("tie.length").setFocus());
        until("its help is there", () -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().contains("Common practice for oboe 72 mm, 70 to 75 mm occur.")));
        command("culm.window.thou");
        try {
            assertTrue(ui(() -> find(window().getShell(), Label.class).stream().map(Label::getText).toList()).stream().anyMatch(l -> l.contains("Common practice for oboe 2834.6 thou, 2755.9 to 2952.8 thou occur.")), ui(this::labels).toString());
        } finally {
            command("culm.window.mm");
        }
    }

    @Test
    void findingsAndTheVerdictFollowTheUnit() throws Exception {
        DesignEditor editor = open("trial-9-open.reed");
        String mm = ui(() -> editor.findings()).toString();
        assertTrue(mm.contains("still open by 0.") && mm.contains(" mm at the staple's top") && !mm.contains("thou"), mm);
        assertTrue(ui(editor::verdict).matches("sides never close: open by 0\\.\\d\\d mm at the staple's top.*"), ui(editor::verdict));
        command("culm.window.thou");
        try {
            String thou = ui(() -> editor.findings()).toString();
            assertTrue(thou.matches("(?s).*still open by \\d+\\.\\d thou at the staple's top.*Now \\d+(\\.\\d)? thou, held against 0 thou.*"), thou);
            assertFalse(thou.contains(" mm"), thou);
            assertTrue(ui(editor::verdict).matches("sides never close: open by \\d+\\.\\d thou at the staple's top, give or take \\d+\\.\\d thou, within which they may close"), ui(editor::verdict));
            keepPicture("thousandths-findings");
        } finally {
            command("culm.window.mm");
        }
        assertEquals(mm, ui(() -> editor.findings()).toString());
    }

    @Test
    void theMeasuredPlacesSayTheirUnit() throws Exception {
        open("trial-12.reed");
        until("the form is there", () -> find(window().getShell(), LinkText.class).stream().anyMatch(l -> "shape.places".equals(l.getData("culm.table"))));
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> "shape.places".equals(l.getData("culm.table"))).findFirst().orElseThrow().click());
        assertTrue(ui(this::heads).containsAll(List.of("from the fold\nmm", "width\nmm")), ui(this::heads).toString());
        command("culm.window.thou");
        try {
            assertTrue(ui(this::heads).containsAll(List.of("from the fold\nthou", "width\nthou")), ui(this::heads).toString());
            keepPicture("thousandths-places");
        } finally {
            command("culm.window.mm");
        }
    }

    private List<String> heads() {
        return find(window().getShell(), Label.class).stream().map(Label::getText).filter(t -> t.contains("\n")).toList();
    }

    private List<String> labels() {
        return find(window().getShell(), Canvas.class).stream().map(c -> c.getData("culm.words")).filter(String.class::isInstance).map(String.class::cast).toList();
    }

    @Test
    void theThreadIsMeasuredInInches() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        assertTrue(ui(() -> editor.numbers()).stream().anyMatch(n -> n.matches(" \\d{3}\u2009mm and tails")), ui(() -> editor.numbers()).toString());
        command("culm.window.thou");
        try {
            List<String> numbers = ui(() -> editor.numbers());
            assertTrue(numbers.stream().anyMatch(n -> n.matches(" \\d\\d\\.\\d\u2009in and tails")), numbers.toString());
            assertEquals("1850\u2009thou", ui(() -> field(editor, Inputs.STAPLE_LENGTH).getText()), "47 mm, known to two thousandths");
            assertTrue(numbers.stream().anyMatch(n -> n.matches("cane above it \\d{3}\u2009thou")), numbers.toString());
        } finally {
            command("culm.window.mm");
        }
    }
}
