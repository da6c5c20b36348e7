package culm.figures.reed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;
import culm.figures.Blanks;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Handle;
import culm.figures.Item;
import culm.figures.Lengths;
import culm.figures.Palette;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Scale;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.svg.SvgWriter;

/** The reed view shows what was computed, on one axis, and its labels never overlap. */
class ReedViewTest {
    private static final TextMeasure FONT = ShippedFont.load();

    private static ReedDrawing draw(Blank blank, double width) {
        Reed reed = Reed.of(Blanks.assessed(blank));
        return ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, width), FONT, ReedOptions.WINDOW);
    }

    @Test
    void whatWasPreparedServesForAFullerAssessmentOfTheSameBlankOnly() {
        Blank blank = Blanks.example();
        Reed prepared = Reed.of(Assessor.given(blank)).ready();
        Reed told = prepared.told(Assessor.assess(blank));
        assertSame(prepared.outlines(), told.outlines());
        assertTrue(told.assessment().turnsBand().isPresent());
        Drawing drawn = ReedView.draw(told, Limits.STANDARD, ReedView.fitting(told, 700), FONT, ReedOptions.WINDOW).drawing();
        assertEquals(SvgWriter.write(draw(blank, 700).drawing(), Palette.LIGHT), SvgWriter.write(drawn, Palette.LIGHT));
        assertThrows(IllegalArgumentException.class, () -> prepared.told(Assessor.assess(Blanks.example())));
    }

    private static List<Item> part(Drawing drawing, Part part) {
        List<Item> found = new ArrayList<>();
        collect(drawing.items(), part, found);
        return found;
    }

    private static void collect(List<Item> items, Part part, List<Item> found) {
        for (Item item : items) {
            if (item instanceof Group g) {
                if (g.part() == part) {
                    found.addAll(new Drawing(1, 1, "", "", g.items()).flat());
                } else {
                    collect(g.items(), part, found);
                }
            }
        }
    }

    @Test
    void handlesSitAtTheirMarks() {
        ReedDrawing drawn = draw(Blanks.example(), 760);
        List<Handle> handles = drawn.drawing().handles();
        assertEquals(List.of("corkTop", "finished", "fold", "stapleTop", "wrapTop"), handles.stream().map(Handle::id).sorted().toList());
        Reed reed = Reed.of(Blanks.assessed(Blanks.example()));
        for (Handle handle : handles) {
            double z = java.util.Arrays.stream(Mark.values()).filter(m -> m.id().equals(handle.id())).mapToDouble(m -> reed.mark(m).orElseThrow()).findFirst().orElseThrow();
            assertEquals(z, drawn.scale().z(handle.x()), 1e-9);
        }
        for (Handle a : handles) {
            for (Handle b : handles) {
                assertTrue(a == b || Math.hypot(a.x() - b.x(), a.y() - b.y()) >= 2 * Handle.RADIUS, a + " covers " + b);
            }
        }
    }

    @Test
    void bothSidesAreTrueToScale() {
        ReedDrawing drawn = draw(Blanks.example(), 760);
        double perMm = drawn.scale().perMm();
        List<Box> brass = part(drawn.drawing(), Part.STAPLE).stream().map(i -> ((Shape) i).path().bounds()).toList();
        assertEquals(47 * perMm, brass.get(0).width(), 1e-6);
        assertEquals(5.40 * perMm, brass.get(0).height(), 1e-6);
        assertEquals(5.40 * perMm, brass.get(2).bottom() - brass.get(1).y(), 1e-6);
        double cane = part(drawn.drawing(), Part.CANE).stream().map(i -> ((Shape) i).path().bounds()).mapToDouble(Box::right).max().orElseThrow();
        assertEquals(drawn.scale().x(72), cane, 1e-6);
    }

    @Test
    void theThreadHasItsTurns() {
        ReedDrawing drawn = draw(Blanks.example(), 1500);
        Path cut = part(drawn.drawing(), Part.THREAD).stream().map(i -> ((Shape) i).path()).reduce((a, b) -> b).orElseThrow();
        int[] circles = new int[1];
        cut.walk(new culm.figures.PathSink() {
            @Override
            public void move(double x, double y) {
                circles[0]++;
            }

            @Override
            public void line(double x, double y) {
                assertTrue(drawn.cut().y() <= y && y <= drawn.cut().bottom() + 1e-6, "thread outside its strip: " + y);
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                line(x, y);
            }

            @Override
            public void close() {
                assertTrue(circles[0] > 0);
            }
        });
        assertEquals(2 * (52 + 5), circles[0]); // 52.439 turns down to the cork and 5 up, each seen twice
    }

    @Test
    void theGraphGoesThroughTheClosing() {
        ReedDrawing drawn = draw(Blanks.example(), 760);
        Box point = part(drawn.drawing(), Part.GRAPH).stream().filter(Shape.class::isInstance).map(i -> ((Shape) i).path().bounds())
                .filter(b -> Math.abs(b.width() - 11) < 1e-9 && Math.abs(b.height() - 11) < 1e-9).findFirst().orElseThrow();
        assertEquals(46.0488965, drawn.scale().z(point.x() + 5.5), 1e-6);
        assertEquals(0, drawn.open().value(point.y() + 5.5), 1e-9);
        assertTrue(drawn.drawing().flat().stream().anyMatch(i -> i instanceof Text t && t.text().equals("1.1 turns left")));
    }

    @Test
    void labelsNeverOverlapForAnyBlankWidthAndZoom() {
        SplittableRandom random = new SplittableRandom(5);
        for (int run = 0; run < 400; run++) {
            double staple = random.nextDouble(40, 49);
            Blank blank = Blanks.example().edit().set(Inputs.STAPLE_LENGTH, staple).set(Inputs.WRAP_TOP, staple - random.nextDouble(-1, 2))
                    .set(Inputs.TIE_LENGTH, staple + random.nextDouble(22, 28)).set(Inputs.FINISHED, staple + random.nextDouble(20, 26))
                    .set(Inputs.CORK_TOP, random.nextDouble(20, 30)).set(Inputs.WRAP_BOTTOM, random.nextDouble(20, 30)).build();
            Reed reed = Reed.of(Blanks.assessed(blank));
            Scale scale = ReedView.fitting(reed, random.nextDouble(180, 1800));
            if (run % 3 == 0) {
                scale = scale.zoomed(random.nextDouble(20, 70), random.nextDouble(1, 12));
            }
            Drawing drawing = ReedView.draw(reed, Limits.STANDARD, scale, FONT, ReedOptions.WINDOW).drawing();
            List<Text> texts = new ArrayList<>();
            part(drawing, Part.MARKS).stream().filter(Text.class::isInstance).map(Text.class::cast).filter(t -> t.text().matches(".*\\d$"))
                    .filter(t -> !t.text().contains("give")).forEach(texts::add);
            part(drawing, Part.RULER).stream().filter(Text.class::isInstance).map(Text.class::cast).forEach(texts::add);
            for (int i = 0; i < texts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    Text a = texts.get(i);
                    Text b = texts.get(j);
                    assertFalse(a.box(FONT).overlaps(shrunk(b.box(FONT))), "run " + run + ": " + a.text() + " lies on " + b.text());
                }
            }
        }
    }

    /** Rows are set closer than ascent and descent together, as letters are: a descender may enter the line box of the next row. */
    private static Box shrunk(Box b) {
        return new Box(b.x(), b.y() + 2, b.width(), Math.max(0, b.height() - 4));
    }

    @Test
    void inAWindowNoTextAtAllOverlapsAnother() {
        for (Blank blank : List.of(Blanks.example(), Blanks.open(), Blanks.noCork(), Blanks.example().with(Inputs.CROOKED, 0.2),
                Blanks.example().with(Inputs.TIE_LENGTH, 69.4), Blanks.example().with(Inputs.WRAP_TOP, 48.3), Blanks.example().with(Inputs.TUBE, 6.9))) {
            for (double width = 520; width < 1900; width += 60) {
                List<Text> texts = draw(blank, width).drawing().flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
                for (int i = 0; i < texts.size(); i++) {
                    for (int j = 0; j < i; j++) {
                        Text a = texts.get(i);
                        Text b = texts.get(j);
                        assertFalse(a.box(FONT).overlaps(shrunk(b.box(FONT))), width + ": " + a.text() + " lies on " + b.text());
                    }
                }
            }
        }
    }

    @Test
    void marksThatDoNotExistAreNotDrawn() {
        ReedDrawing drawn = draw(Blanks.noCork(), 760);
        assertTrue(part(drawn.drawing(), Part.CORK).isEmpty());
        assertTrue(drawn.drawing().flat().stream().noneMatch(i -> i instanceof Text t && t.text().startsWith("cork")));
    }

    @Test
    void aBlankThatCannotBeDrawnSaysWhyAndKeepsItsMarks() {
        ReedDrawing drawn = draw(Blanks.example().with(Inputs.TUBE, 6.9), 760);
        assertTrue(drawn.drawing().flat().stream().anyMatch(i -> i instanceof Text t && t.text().contains("6.9 mm")));
        assertFalse(drawn.drawing().handles().isEmpty());
    }

    @Test
    void anythingEnlargedIsSaid() {
        Reed reed = Reed.of(Blanks.assessed(Blanks.example()));
        Drawing drawing = ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760), FONT, new ReedOptions(2, 4, 150, true, 1000, Lengths.MM)).drawing();
        assertTrue(drawing.flat().stream().anyMatch(i -> i instanceof Text t && t.text().contains("across enlarged 2.0 times more")));
    }
}
