package culm.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.figures.font.ShippedFont;

/** Scales, ticks, numbers, paths, text. */
class BasicsTest {
    @Test
    void aScaleGoesThereAndBack() {
        Scale scale = new Scale(0, 72, 12, 732);
        assertEquals(10, scale.perMm(), 1e-12);
        assertEquals(46.05, scale.z(scale.x(46.05)), 1e-12);
        Scale zoomed = scale.zoomed(46, 6);
        assertEquals(scale.x(46), zoomed.x(46), 1e-9);
        assertEquals(60, zoomed.perMm(), 1e-9);
        assertEquals(scale.x(40), scale.shifted(-3).x(37), 1e-9);
    }

    @Test
    void lifeSizeOnPaperIs96ThOfAnInch() {
        assertEquals(1, new Scale(0, 100, 0, 100 * Drawing.UNITS_PER_MM).enlargement(), 1e-12);
    }

    @Test
    void aLineNeverEndsBetweenANumberAndItsUnit() {
        String text = "The wrap stops at 46.5 mm, or 1831 thou, with 1.2 turns left and 95 % certain.";
        for (double width = 30; width < 400; width += 5) {
            List<String> lines = Lines.of(text, ShippedFont.load(), Size.BODY, false, width);
            assertEquals(text, String.join(" ", lines));
            assertTrue(lines.stream().noneMatch(l -> l.matches(".*\\d")), lines.toString());
        }
    }

    @Test
    void ticksAreRoundInsideAndNotTooMany() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 5000; i++) {
            double from = random.nextDouble(-1000, 1000) * Math.pow(10, random.nextInt(-4, 3));
            double to = from + Math.pow(10, random.nextDouble(-5, 5));
            int most = random.nextInt(1, 30);
            Ticks ticks = Ticks.within(from, to, most);
            assertTrue(ticks.values().size() <= most + 1, () -> from + " " + to + ": " + ticks);
            double first = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step()) + 1e-9));
            assertTrue(Math.abs(first - 1) < 1e-6 || Math.abs(first - 2) < 1e-6 || Math.abs(first - 5) < 1e-6, () -> "step " + ticks.step());
            for (double v : ticks.values()) {
                assertTrue(v >= from - 1e-6 * ticks.step() && v <= to + 1e-6 * ticks.step());
                assertEquals(v, Double.parseDouble(ticks.label(v).replace('\u2212', '-')), 1e-6 * ticks.step() + 1e-9 * Math.abs(v));
            }
        }
    }

    @Test
    void numbersAreWrittenForTheBench() {
        assertEquals("46.0", Numbers.fixed(46.0489, 1));
        assertEquals("0.0", Numbers.fixed(-0.04, 1));
        assertEquals("\u22120.1", Numbers.fixed(-0.1446, 1));
        assertEquals("\u22120.2", Numbers.difference(Numbers.fixed(1.04, 1), Numbers.fixed(1.16, 1)), "of what is shown, 1.0 and 1.2");
        assertEquals("2.3", Numbers.difference("1.0", "\u22121.3"));
        assertEquals(List.of("+0.2", "\u22120.2", "0.0"), List.of(Numbers.signed("0.2"), Numbers.signed("\u22120.2"), Numbers.signed("0.0")));
        assertEquals("46.5", Numbers.given(46.5));
        assertEquals("46.45", Numbers.given(46.45));
        assertEquals("72.0", Numbers.given(72));
        assertEquals("0.5", Numbers.plain(0.5));
        assertEquals("-3", Numbers.plain(-3.0000001));
        assertEquals("12.346", Numbers.plain(12.34567));
        assertThrows(IllegalArgumentException.class, () -> Numbers.plain(Double.NaN));
    }

    @Test
    void nothingThatIsNoNumberGetsIntoADrawing() {
        assertThrows(IllegalArgumentException.class, () -> Path.line(0, 0, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Path.circle(0, Double.POSITIVE_INFINITY, 1));
        assertThrows(IllegalArgumentException.class, () -> new Text("a", Double.NaN, 0, Anchor.START, Size.BODY, false, Role.INK, 0));
        assertThrows(IllegalArgumentException.class, () -> new Handle("a", "a", 0, Double.NaN, Role.INK));
        assertThrows(IllegalArgumentException.class, () -> new Drawing(0, 10, "", "", List.of()));
    }

    @Test
    void aCircleIsRound() {
        Path circle = Path.circle(10, 20, 5);
        Box bounds = circle.bounds();
        assertEquals(5, bounds.x(), 1e-12);
        assertEquals(10, bounds.width(), 1e-12);
        double[] worst = new double[1];
        circle.walk(new PathSink() {
            private double px;
            private double py;

            @Override
            public void move(double x, double y) {
                line(x, y);
            }

            @Override
            public void line(double x, double y) {
                px = x;
                py = y;
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                for (double t = 0; t <= 1; t += 0.1) {
                    double u = 1 - t;
                    double cx = u * u * u * px + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t * t * t * x;
                    double cy = u * u * u * py + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t * t * t * y;
                    worst[0] = Math.max(worst[0], Math.abs(Math.hypot(cx - 10, cy - 20) - 5));
                }
                line(x, y);
            }

            @Override
            public void close() {
                assertFalse(Double.isNaN(px));
            }
        });
        assertTrue(worst[0] < 0.0015, "off by " + worst[0]);
    }

    @Test
    void groupsAreResolvedToTheirPlaces() {
        Drawing inner = new Pen().text("a", 1, 2, Anchor.START, Size.BODY, Role.INK).add(new Handle("fold", "fold", 3, 4, Role.INK)).drawing(10, 10, "", "");
        Drawing outer = new Pen().add(inner.at(100, 200)).drawing(300, 300, "", "");
        assertEquals(103, outer.handles().get(0).x(), 0);
        assertEquals(204, outer.handles().get(0).y(), 0);
        assertEquals(101, ((Text) outer.flat().get(0)).x(), 0);
    }

    @Test
    void theShippedFontMeasuresText() {
        ShippedFont font = ShippedFont.load();
        double one = font.width("46.5", Size.BODY, false);
        assertEquals(2 * one, font.width("46.546.5", Size.BODY, false), 1e-4);
        assertTrue(font.width("46.5", Size.BODY, true) > one);
        assertEquals(0.6362 * 13 * 3 + 0.3179 * 13, one, 0.05); // DejaVu Sans: figures 1303, point 651 of 2048 units
        assertTrue(font.ascent(Size.BODY) > font.descent(Size.BODY));
        assertTrue(font.width("\ud83d\ude00 \u4e2d", Size.BODY, false) > 0);
    }

    @Test
    void linesBreakAtSpaces() {
        ShippedFont font = ShippedFont.load();
        List<String> lines = Lines.of("The fold at 46.0 mm is not above the staple's top at 47.0 mm.", font, Size.BODY, false, 120);
        assertTrue(lines.size() > 2);
        lines.forEach(line -> assertTrue(font.width(line, Size.BODY, false) <= 120));
        assertEquals("The fold at 46.0 mm is not above the staple's top at 47.0 mm.", String.join(" ", lines));
    }
}
