package culm.figures.reed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Limits;
import culm.figures.Blanks;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;
import culm.figures.parts.BoreArea;
import culm.figures.parts.GougeThickness;
import culm.figures.parts.ShapeOutline;

/** Every drawing writes its lengths in the unit it is given, and draws the same in both. */
class UnitTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private final Reed reed = Reed.of(Blanks.assessed(Blanks.example()));

    private static List<Text> texts(Drawing drawing) {
        List<Text> found = new ArrayList<>();
        drawing.flat().forEach(i -> {
            if (i instanceof Text t) {
                found.add(t);
            }
        });
        return found;
    }

    private static boolean says(Drawing drawing, String text) {
        return texts(drawing).stream().anyMatch(t -> t.text().contains(text));
    }

    private List<Drawing> all(Lengths unit) {
        ReedDrawing view = ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760), FONT, ReedOptions.WINDOW.in(unit));
        return List.of(view.drawing(), CrossSection.draw(reed, 44, 230, 260, FONT, unit), LengthStack.draw(reed, Limits.STANDARD, 2, FONT, unit),
                OverlayView.draw(reed, "one", reed, "other", Limits.STANDARD, 760, FONT, unit), ShapeOutline.draw(Blanks.example(), 560, FONT, unit),
                GougeThickness.draw(Blanks.example(), 420, 380, FONT, unit).drawing(), BoreArea.draw(Blanks.example(), 420, 260, FONT, unit).drawing(),
                new Drawing(1, 1, "", "", List.of(view.pointer(44, FONT))));
    }

    @Test
    void noDrawingMixesUnits() {
        for (int i = 0; i < all(Lengths.MM).size(); i++) {
            Drawing mm = all(Lengths.MM).get(i);
            Drawing thou = all(Lengths.THOU).get(i);
            assertTrue(says(mm, "mm") && !says(mm, "thou"), mm.title());
            assertTrue(says(thou, "thou") && !says(thou, "mm"), thou.title());
            assertFalse((thou.title() + thou.description()).contains("mm"), thou.title());
            assertEquals(mm.width(), thou.width(), i == 2 ? 60 : 1e-9, "only the length stack leaves room for its words");
        }
    }

    @Test
    void theRulerAndTheMarksSayTheSameHeight() {
        ReedDrawing thou = ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760), FONT, ReedOptions.WINDOW.in(Lengths.THOU));
        assertTrue(says(thou.drawing(), "fold 2835"), "72.0 mm, to a thousandth of an inch");
        Text number = texts(thou.drawing()).stream().filter(t -> t.text().equals("1500")).findFirst().orElseThrow();
        assertEquals(thou.scale().x(38.1), number.x(), 1e-9, "an inch and a half is where it is");
        assertTrue(says(thou.drawing(), "How far the sides are open, thou"));
        assertEquals(ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760), FONT, ReedOptions.WINDOW).open(), thou.open(), "the graph's axis stays in mm");
    }

    @Test
    void axesHoldWhatTheirNumbersSay() {
        ChartDrawing mm = BoreArea.draw(Blanks.example(), 420, 260, FONT);
        ChartDrawing inches = BoreArea.draw(Blanks.example(), 420, 260, FONT, Lengths.THOU);
        assertEquals(mm.x().to() / 0.0254, inches.x().to(), 1e-6);
        assertEquals(mm.y().to() / 645.16, inches.y().to(), 1e-9);
        ChartDrawing gouge = GougeThickness.draw(Blanks.example(), 420, 380, FONT, Lengths.THOU);
        assertEquals(GougeThickness.draw(Blanks.example(), 420, 380, FONT).y().to() / 0.0254, gouge.y().to(), 1e-6);
    }

    @Test
    void noMoreDigitsThanACaliperHas() {
        assertEquals("2803", Lengths.THOU.given(71.2, 1));
        assertEquals("71.25", Lengths.MM.given(71.25, 1));
        assertEquals("5.5 thou", Lengths.THOU.text(0.14, 2));
        assertEquals("0.0304 in\u00b2", Lengths.THOU.area(19.63));
        assertEquals("19.6 mm\u00b2", Lengths.MM.area(19.63));
        assertEquals("197", Lengths.THOU.brief(5));
        assertEquals("5", Lengths.MM.brief(5));
    }
}
