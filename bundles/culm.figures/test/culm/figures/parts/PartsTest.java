package culm.figures.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Blanks;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;
import culm.figures.reed.StapleDrawing;

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
        assertTrue(texts.contains("4.83 at 26") && texts.contains("7.00 at 0") && texts.contains("4.35 at 37"), texts.toString());
    }

    @Test
    void theRulerOfAShapeMissesNoNumberAndTheDrawingSaysItsScale() {
        for (double width : new double[] {280, 430, 560, 620, 900}) {
            List<Text> all = ShapeOutline.draw(blank, width, FONT).flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
            List<Double> numbers = all.stream().filter(t -> t.role() == Role.QUIET && t.anchor() == Anchor.MIDDLE).map(t -> Double.valueOf(t.text())).toList();
            assertEquals(0, numbers.get(0), 0);
            for (int i = 1; i < numbers.size(); i++) {
                assertEquals(i * numbers.get(1), numbers.get(i), 0, "at " + width + ": " + numbers);
            }
            assertTrue(numbers.get(numbers.size() - 1) + numbers.get(1) > 37, "to the end of the cane: " + numbers);
            String scale = String.format(java.util.Locale.ROOT, "drawn %.1f : 1", (width - 48) / 37 / Drawing.UNITS_PER_MM);
            Text said = all.stream().filter(t -> t.text().equals(scale)).findFirst().orElseThrow();
            assertTrue(all.stream().noneMatch(t -> t != said && t.box(FONT).overlaps(said.box(FONT))), scale + " lies free at " + width);
            assertTrue(all.stream().filter(t -> t.text().contains(" at ")).allMatch(t -> t.text().matches("\\d\\.\\d\\d at [\\d.]+")), all.toString());
        }
    }

    @Test
    void theGougeHasItsThickness() {
        List<double[]> course = GougeThickness.course(blank.parts().gouge(), blank.parts().gouge().at(0), Math.asin(3.5 / 5.25), Lengths.MM);
        assertEquals(0.60, course.get(course.size() / 2)[1], 1e-12);
        assertEquals(0.45, course.get(0)[1], 1e-9);
        assertEquals(7.662140390 / 2, course.get(course.size() - 1)[0], 1e-8); // arc of chord 7 on R 5.25
    }

    @Test
    void theGougeSaysByHowMuchItsThicknessIsEnlarged() {
        for (double width : new double[] {260, 420, 620}) {
            for (Lengths unit : List.of(Lengths.MM, Lengths.THOU)) {
                ChartDrawing chart = GougeThickness.draw(blank, width, 380, FONT, unit, 4.5);
                double up = chart.y().at(unit.of(0.5)) - chart.y().at(unit.of(0.6));
                double across = chart.x().at(unit.of(0.6)) - chart.x().at(unit.of(0.5));
                String said = String.format(java.util.Locale.ROOT, "Thickness, enlarged %.1f : 1", up / across);
                Text caption = chart.drawing().flat().stream().filter(i -> i instanceof Text t && t.text().startsWith(said)).map(Text.class::cast).findFirst().orElseThrow();
                assertTrue(caption.box(FONT).right() <= width, caption.text() + " in " + width);
                assertEquals(width > 300, caption.text().contains(" against the "), caption.text() + " in " + width);
            }
        }
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

    private static List<String> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).toList();
    }

    @Test
    void theStapleIsTrueToScaleFromBothSidesAndNamesItsLengths() {
        Drawing drawing = StapleDrawing.draw(blank, 600, 430, FONT, Lengths.MM);
        List<Box> outlines = drawing.flat().stream().filter(Shape.class::isInstance).map(i -> ((Shape) i).path().bounds()).toList();
        double wide = 2 * blank.parts().staple().outside(0).halfWide();
        assertEquals(wide / 47, outlines.get(0).height() / outlines.get(0).width(), 1e-9, "the wide side comes first");
        List<String> texts = texts(drawing);
        assertTrue(texts.containsAll(List.of("staple length 47.0", "cork top 25.0", "Wide side, mm", "Narrow side, cut through the middle, mm", "from the bottom of the staple, mm")), texts.toString());
        assertEquals(2, texts.stream().filter(t -> t.equals("5.40 outside, 4.90 inside")).count(), "round at the bottom: " + texts);
        assertTrue(texts.contains(String.format(java.util.Locale.ROOT, "%.2f outside, %.2f inside", 2 * blank.parts().staple().outside(47).halfNarrow(),
                2 * blank.parts().staple().bore(47).halfNarrow())), texts.toString());
        assertEquals(430, drawing.height(), 1e-9, drawing.height() + " high");
        Drawing low = StapleDrawing.draw(blank, 600, 320, FONT, Lengths.MM);
        assertTrue(low.height() <= 320 && texts(low).contains("staple length 47.0") && !texts(low).contains("from the bottom of the staple, mm"), "without room for the bore: " + low.height());
        List<String> thou = texts(StapleDrawing.draw(blank, 600, 430, FONT, Lengths.THOU));
        assertTrue(thou.contains("staple length 1850") && thou.contains("area, in²") && thou.stream().noneMatch(t -> t.contains("mm")), thou.toString());
        assertTrue(texts(StapleDrawing.draw(Blanks.noCork(), 600, 400, FONT, Lengths.MM)).stream().noneMatch(t -> t.contains("cork")));
    }

    @Test
    void theBoreOfAShortAndWideStapleHasRoomToo() {
        Blank horn = Blanks.noCork().edit().set("staple.topWide", 4.1).set("staple.topNarrow", 2.65).set("staple.bottom", 6.8).build();
        for (double high : new double[] {420, 460, 600}) {
            Drawing drawing = StapleDrawing.draw(horn, 620, high, FONT, Lengths.MM);
            assertTrue(drawing.height() <= high && texts(drawing).contains("Bore area along the staple"), high + ": " + texts(drawing));
        }
        assertEquals(620, StapleDrawing.draw(horn, 620, 600, FONT, Lengths.MM).width(), 1e-9, "as wide as may be where there is room for both");
    }

    @Test
    void aThreadIsDrawnByItsTurnsWithThePitchTold() {
        Drawing drawing = ThreadTurns.draw(blank.with(Inputs.THREAD_PITCH, 0.45), 500, FONT, Lengths.MM);
        List<Box> turns = drawing.flat().stream().filter(Shape.class::isInstance).map(i -> ((Shape) i).path().bounds()).limit(10).toList();
        assertEquals(0.41 / 0.45, turns.get(0).width() / (turns.get(1).x() - turns.get(0).x()), 1e-9, "the gap is seen");
        assertTrue(texts(drawing).containsAll(List.of("turn to turn 0.45", "ten turns 4.5", "thread 0.41", "Ten turns side by side, mm")), texts(drawing).toString());
        List<String> thou = texts(ThreadTurns.draw(blank, 500, FONT, Lengths.THOU));
        assertTrue(thou.contains("turn to turn 16.1") && thou.stream().noneMatch(t -> t.contains("mm")), thou.toString());
    }

    @Test
    void theScaleOfAThreadStandsAboveItsTurns() {
        for (double width : new double[] {330, 480, 620, 900}) {
            Drawing drawing = ThreadTurns.draw(blank, width, FONT, Lengths.MM);
            double end = drawing.flat().stream().filter(Shape.class::isInstance).mapToDouble(i -> ((Shape) i).path().bounds().right()).max().orElseThrow();
            Text scale = drawing.flat().stream().filter(i -> i instanceof Text t && t.text().startsWith("drawn ")).map(Text.class::cast).findFirst().orElseThrow();
            assertEquals(end, scale.box(FONT).right(), 1e-6, "at " + width);
        }
    }

    @Test
    void drawingsOfPartsKeepTheirWordsApartAndInside() {
        for (double width : new double[] {240, 420, 620}) {
            for (Drawing drawing : List.of(StapleDrawing.draw(blank, width, 300, FONT, Lengths.THOU), ThreadTurns.draw(blank, width, FONT, Lengths.THOU))) {
                List<Text> texts = drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
                for (int i = 0; i < texts.size(); i++) {
                    Box box = texts.get(i).box(FONT);
                    assertTrue(box.x() >= 0 && box.bottom() <= drawing.height(), texts.get(i).text() + " at " + width);
                    for (int j = 0; j < i; j++) {
                        Box inner = new Box(box.x(), box.y() + box.height() * 0.3, box.width(), box.height() * 0.4);
                        assertFalse(inner.overlaps(texts.get(j).box(FONT)), texts.get(i).text() + " lies on " + texts.get(j).text() + " at " + width);
                    }
                }
            }
        }
    }

    @Test
    void aPartThatCannotBeDrawnSaysWhy() {
        Blank broken = blank.with(Inputs.TUBE, 6.9);
        for (Drawing drawing : List.of(ShapeOutline.draw(broken, 400, FONT), GougeThickness.draw(broken, 400, 300, FONT).drawing(),
                BoreArea.draw(broken, 400, 300, FONT).drawing(), StapleDrawing.draw(broken, 400, 300, FONT, Lengths.MM))) {
            assertTrue(drawing.flat().stream().anyMatch(i -> i instanceof Text t && t.text().contains("6.9 mm")));
        }
    }
}
