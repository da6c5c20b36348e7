package culm.figures.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Blanks;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;

/** Shape, gouge and bore as drawn against what was given. */
class PartsTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private final Blank blank = Blanks.example();

    @Test
    void theShapeIsTrueToScaleAndNamesItsMeasuredPlaces() {
        Drawing drawing = ShapeOutline.draw(blank, 560, FONT);
        Box outline = drawing.flat().stream().filter(Shape.class::isInstance).map(i -> ((Shape) i).path().bounds()).findFirst().orElseThrow();
        assertEquals(7.00 / 37, outline.height() / outline.width(), 1e-9);
        List<String> texts = drawing.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).toList();
        assertTrue(texts.contains("4.83 at 26") && texts.contains("7.0 at 0") && texts.contains("4.35 at 37"), texts.toString());
    }

    @Test
    void theGougeHasItsThickness() {
        List<double[]> course = GougeThickness.course(blank.parts().gouge(), blank.parts().gouge().at(0), Math.asin(3.5 / 5.25), Lengths.MM);
        assertEquals(0.60, course.get(course.size() / 2)[1], 1e-12);
        assertEquals(0.45, course.get(0)[1], 1e-9);
        assertEquals(7.662140390 / 2, course.get(course.size() - 1)[0], 1e-8); // arc of chord 7 on R 5.25
    }

    @Test
    void aGougeAloneIsDrawnAsFarAsItWasMeasured() {
        ChartDrawing asWideAsTheBlade = GougeThickness.draw(blank, 420, 380, FONT, Lengths.MM, 0);
        ChartDrawing further = GougeThickness.draw(blank, 420, 380, FONT, Lengths.MM, 4.5);
        assertTrue(asWideAsTheBlade.x().to() < 4.5 && further.x().to() >= 4.5, further.x().to() + " mm");
    }

    @Test
    void theBoreAddsUpToItsVolume() {
        List<double[]> points = BoreArea.points(blank.parts().staple(), Lengths.MM);
        double volume = 0;
        for (int i = 1; i < points.size(); i++) {
            volume += (points.get(i)[0] - points.get(i - 1)[0]) * (points.get(i)[1] + points.get(i - 1)[1]) / 2;
        }
        assertEquals(486.146407, volume, 0.05);
    }

    @Test
    void aPartThatCannotBeDrawnSaysWhy() {
        Blank broken = blank.with(Inputs.TUBE, 6.9);
        for (Drawing drawing : List.of(ShapeOutline.draw(broken, 400, FONT), GougeThickness.draw(broken, 400, 300, FONT).drawing(),
                BoreArea.draw(broken, 400, 300, FONT).drawing())) {
            assertTrue(drawing.flat().stream().anyMatch(i -> i instanceof Text t && t.text().contains("6.9 mm")));
        }
    }
}
