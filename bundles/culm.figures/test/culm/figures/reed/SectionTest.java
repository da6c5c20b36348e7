package culm.figures.reed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.figures.Blanks;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.geometry.words.Told;

/** Sections and the length stack against computed values. */
class SectionTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private final Reed reed = Reed.of(Blanks.assessed(Blanks.example()));

    private static double area(List<double[]> polygon) {
        double twice = 0;
        for (int i = 0; i < polygon.size(); i++) {
            double[] a = polygon.get(i);
            double[] b = polygon.get((i + 1) % polygon.size());
            twice += a[0] * b[1] - b[0] * a[1];
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void boreAndBrassHaveTheirAreas() {
        SectionShapes shapes = SectionShapes.at(reed, 44);
        assertEquals(reed.bore(44).area(), area(shapes.bore()), 2e-3 * reed.bore(44).area());
        assertEquals(reed.outside(44).area(), area(shapes.staple()), 2e-3 * reed.outside(44).area());
    }

    @Test
    void threadLiesInOneLayerBelowAndTwoOnTop() {
        assertEquals(1, SectionShapes.at(reed, 40).thread().size());
        assertEquals(2, SectionShapes.at(reed, 46.2).thread().size());
        assertEquals(0, SectionShapes.at(reed, 46.8).thread().size());
        assertEquals(0, SectionShapes.at(reed, 10).thread().size());
        double top = SectionShapes.at(reed, 46.2).thread().get(0).stream().mapToDouble(p -> p[1]).max().orElseThrow();
        assertEquals(reed.outside(46.2).halfNarrow() + 0.6 + 2 * 0.41, top, 1e-3);
    }

    @Test
    void aboveTheStapleThereIsNoBrassAndItSaysSketch() {
        SectionShapes shapes = SectionShapes.at(reed, 60);
        assertTrue(shapes.sketch() && shapes.staple().isEmpty() && shapes.bore().isEmpty());
        assertTrue(says(CrossSection.draw(reed, 60, 230, 260, FONT)).contains("sketch"));
    }

    @Test
    void whyThereIsNoSectionIsReadInFull() {
        Blank broken = Blanks.example().edit().set("gouge.middle", 6).build();
        Reed none = Reed.of(Blanks.assessed(broken));
        assertTrue(none.problem().isPresent(), "no such gouge fits into the tube");
        Drawing drawing = CrossSection.draw(none, 44, 90, 150, FONT);
        assertEquals(150, drawing.height(), 1e-9, "all of it within the box");
        assertTrue(says(drawing).contains(Told.mm(none.problem().get())), says(drawing));
        String inches = says(CrossSection.draw(none, 44, 90, 150, FONT, Lengths.THOU));
        assertTrue(inches.contains(Lengths.THOU.told(none.problem().get())) && !inches.contains(" mm"), inches);
    }

    @Test
    void whatIsSaidIsWhatTheSeamSays() {
        assertTrue(says(CrossSection.draw(reed, 44, 230, 260, FONT)).contains("open by " + Numbers.fixed(reed.open(44).orElseThrow(), 2) + " mm"));
        assertTrue(says(CrossSection.draw(reed, 47, 230, 260, FONT)).contains("pinched by 0.14 mm"));
        Reed crooked = Reed.of(Blanks.assessed(Blanks.example().with(Inputs.CROOKED, 0.2)));
        double gap = crooked.open(44).orElseThrow();
        assertTrue(says(CrossSection.draw(crooked, 44, 400, 260, FONT)).contains("Left open by " + Numbers.fixed(gap + 0.2, 2)));
    }

    @Test
    void everyHeightOfEveryBlankCanBeDrawn() {
        for (Reed any : List.of(reed, Reed.of(Blanks.assessed(Blanks.open())), Reed.of(Blanks.assessed(Blanks.noCork())),
                Reed.of(Blanks.assessed(Blanks.example().with(Inputs.TUBE, 6.9))), Reed.of(Blanks.assessed(Blanks.example().with(Inputs.TIE_LENGTH, 40))))) {
            for (double z = -5; z < 80; z += 0.37) {
                Drawing drawing = CrossSection.draw(any, z, 230, 260, FONT);
                assertTrue(drawing.flat().size() >= 2);
            }
        }
    }

    @Test
    void theLengthStackNamesEveryMarkAndIsTrueToItsScale() {
        Drawing drawing = LengthStack.draw(reed, Limits.STANDARD, 2, FONT);
        String all = says(drawing);
        for (String mark : List.of("cork 25.0", "end of the cane 35.0", "sides close 46.0", "top of the wrap 46.5", "staple top 47.0", "finished 70.0", "fold 72.0",
                "cane on the staple 12.0", "cane above the staple 25.0", "turns left 1.1")) {
            assertTrue(all.contains(mark), mark + " is missing in " + all);
        }
        double longest = drawing.flat().stream().filter(culm.figures.Shape.class::isInstance).map(i -> ((culm.figures.Shape) i).path().bounds())
                .filter(b -> b.height() == 0).mapToDouble(culm.figures.Box::width).max().orElseThrow();
        assertEquals(72 * 2 * Drawing.UNITS_PER_MM, longest, 1e-6);
    }

    private static String says(Drawing drawing) {
        StringBuilder all = new StringBuilder();
        drawing.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).forEach(t -> all.append(t).append(' '));
        return all.toString();
    }
}
