package culm.figures.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.Ticks;
import culm.figures.font.ShippedFont;

/** Charts put values where their axes say, with any data. */
class ChartTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private static final AxisLabel X = new AxisLabel("tie length", "mm");
    private static final AxisLabel Y = new AxisLabel("turns left", "");

    private static List<String> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).toList();
    }

    @Test
    void aPointLiesWhereTheAxesSay() {
        ChartDrawing chart = new Chart("c", X, Y, List.of(Series.points("", List.of(new double[] {70, 2}, new double[] {74, -1}), Series.Marker.DOT, Role.INK)),
                List.of(), false).draw(400, 260, FONT);
        List<Box> dots = chart.drawing().flat().stream().filter(i -> i instanceof Shape s && s.style().fill().equals(Optional.of(Role.INK)))
                .map(i -> ((Shape) i).path().bounds()).toList();
        assertEquals(2, dots.size());
        assertEquals(chart.x().at(70), dots.get(0).x() + 3.6, 1e-9);
        assertEquals(chart.y().at(2), dots.get(0).y() + 3.6, 1e-9);
        assertEquals(chart.x().at(74), dots.get(1).right() - 3.6, 1e-9);
        assertEquals(71.3, chart.x().value(chart.x().at(71.3)), 1e-9);
    }

    @Test
    void axesHaveWordsAndUnitsAndALegendOnlyWhereItIsNeeded() {
        Series one = Series.line("planned", List.of(new double[] {1, 1}, new double[] {2, 2}), Role.INK);
        List<String> single = texts(new Chart("c", X, Y, List.of(one), List.of(), false).draw(400, 260, FONT).drawing());
        assertTrue(single.contains("tie length, mm") && single.contains("turns left"));
        assertFalse(single.contains("planned"));
        assertTrue(texts(new Chart("c", X, Y, List.of(one, one), List.of(), false).draw(400, 260, FONT).drawing()).contains("planned"));
    }

    @Test
    void signsThatLieOverEachOtherLeaveNoHole() {
        List<double[]> twice = List.of(new double[] {1, 1}, new double[] {1.001, 1}, new double[] {3, 2});
        Drawing drawing = new Chart("Twice", new AxisLabel("a", "mm"), new AxisLabel("b", "mm"),
                List.of(new Series("", twice, false, Series.Marker.DOT, Role.BARK, Dash.SOLID)), List.of(), false).draw(400, 300, FONT).drawing();
        List<Shape> signs = drawing.flat().stream().filter(i -> i instanceof Shape s && s.style().fill().equals(Optional.of(Role.BARK))).map(Shape.class::cast).toList();
        assertEquals(3, signs.size(), "one shape for each, since one path is filled by the even-odd rule");
    }

    @Test
    void anyDataCanBeDrawnAndNumbersOnAnAxisNeverOverlap() {
        SplittableRandom random = new SplittableRandom(3);
        for (int run = 0; run < 500; run++) {
            List<double[]> points = new ArrayList<>();
            double offset = random.nextDouble(-1e4, 1e4);
            double size = Math.pow(10, random.nextDouble(-4, 4));
            for (int i = random.nextInt(0, 40); i > 0; i--) {
                points.add(new double[] {random.nextInt(10) == 0 ? Double.NaN : offset + size * random.nextDouble(), size * random.nextDouble(-1, 1)});
            }
            Chart chart = new Chart("c", X, Y, List.of(Series.line("a", points, Role.INK)), List.of(new Span(offset, offset + 1, "my limits", Role.FITS)), run % 2 == 0);
            Drawing drawing = chart.draw(random.nextDouble(100, 900), random.nextDouble(80, 500), FONT).drawing();
            List<Text> numbers = drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).filter(t -> t.text().matches("[\u2212\\d.]+")).toList();
            for (Text a : numbers) {
                for (Text b : numbers) {
                    assertTrue(a == b || !a.box(FONT).overlaps(b.box(FONT)), "run " + run + ": " + a.text() + " lies on " + b.text());
                }
            }
        }
    }

    @Test
    void anAxisHasThreeNumbersAtLeastWhereItHasRoom() {
        SplittableRandom random = new SplittableRandom(17);
        for (int run = 0; run < 500; run++) {
            double size = Math.pow(10, random.nextDouble(-3, 4));
            Series line = Series.line("", List.of(new double[] {0, size}, new double[] {27, size / 3}), Role.INK);
            Drawing drawing = new Chart("Bore area", X, new AxisLabel("area", "mm"), List.of(line), List.of(), true).draw(random.nextDouble(300, 700), random.nextDouble(160, 260), FONT).drawing();
            List<Text> numbers = drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).filter(t -> t.text().matches("[\u2212\\d.]+")).toList();
            assertTrue(numbers.stream().filter(t -> t.anchor() == Anchor.END).count() >= 3, "up to " + size + " in " + drawing.height() + ": " + numbers);
            assertTrue(numbers.stream().filter(t -> t.anchor() == Anchor.MIDDLE).count() >= 3, "across in " + drawing.width() + ": " + numbers);
            assertTrue(numbers.stream().allMatch(a -> numbers.stream().allMatch(b -> a == b || !a.box(FONT).overlaps(b.box(FONT)))), numbers.toString());
        }
    }

    @Test
    void whatIsCountedHasWholeNumbersFromOneOn() {
        for (int blanks = 1; blanks <= 60; blanks++) {
            List<double[]> points = new ArrayList<>();
            for (int i = 1; i <= blanks; i++) {
                points.add(new double[] {i, i % 3});
            }
            for (double width : new double[] {200, 480, 1100}) {
                Drawing drawing = new Chart("c", AxisLabel.counting("blank"), Y, List.of(Series.points("", points, Series.Marker.DOT, Role.INK)), List.of(), true).draw(width, 200, FONT).drawing();
                List<String> across = drawing.flat().stream().filter(i -> i instanceof Text t && t.anchor() == Anchor.MIDDLE).map(i -> ((Text) i).text()).toList();
                assertTrue(!across.isEmpty() && across.stream().allMatch(t -> t.matches("[1-9]\\d*")), blanks + " on " + width + ": " + across);
            }
        }
    }

    @Test
    void binsHoldEveryValueAndAreRound() {
        SplittableRandom random = new SplittableRandom(4);
        for (int run = 0; run < 300; run++) {
            double[] values = random.doubles(random.nextInt(1, 3000)).map(v -> 1.1 + 0.9 * v * v).sorted().toArray();
            Ticks bins = Histogram.bins(values);
            List<Double> borders = bins.values();
            assertTrue(borders.get(0) <= values[0] && borders.get(borders.size() - 1) >= values[values.length - 1] - 1e-12);
            assertTrue(borders.size() <= 42, borders.size() + " borders");
            for (int i = 1; i < borders.size(); i++) {
                assertEquals(bins.step(), borders.get(i) - borders.get(i - 1), 1e-9);
            }
        }
    }

    @Test
    void theBarsOfAHistogramAddUpToAllValues() {
        double[] values = new SplittableRandom(9).doubles(1000).toArray();
        values[3] = Double.NaN;
        ChartDrawing chart = new Histogram("h", Y, values, List.of(), null).draw(400, 260, FONT);
        double sum = 0;
        for (Shape shape : chart.drawing().flat().stream().filter(Shape.class::isInstance).map(Shape.class::cast).toList()) {
            if (shape.style().fillOpacity() == 0.55) {
                double[] tops = tops(shape);
                sum = Arrays.stream(tops).map(t -> chart.y().value(t)).sum();
            }
        }
        assertEquals(99.9, sum, 1e-6);
        assertTrue(texts(chart.drawing()).contains("0.1 % cannot be told"));
    }

    @Test
    void marksAndLimitsOfAHistogramHaveTheirNamesAboveTheBars() {
        SplittableRandom random = new SplittableRandom(12);
        for (int run = 0; run < 60; run++) {
            double[] values = random.doubles(1000).map(v -> 4 * (random.nextBoolean() ? v : v * v)).toArray();
            double at = random.nextDouble(0.1, 3.9);
            List<Histogram.Mark> marks = List.of(new Histogram.Mark(at, "5 % below"), new Histogram.Mark(Math.min(3.95, at + random.nextDouble(0.3)), "middle"), new Histogram.Mark(3.97, "5 % above"));
            ChartDrawing chart = new Histogram("h", Y, values, marks, new Span(random.nextDouble(-1, 1), random.nextDouble(1.5, 5), "allowed", Role.FITS))
                    .draw(random.nextDouble(300, 800), random.nextDouble(240, 500), FONT);
            List<Text> names = chart.drawing().flat().stream().filter(Text.class::isInstance).map(Text.class::cast)
                    .filter(t -> List.of("5 % below", "middle", "5 % above", "allowed").contains(t.text())).toList();
            assertEquals(4, names.size(), "run " + run);
            assertTrue(names.stream().filter(t -> t.text().equals("5 % above")).allMatch(t -> Math.abs(chart.x().at(3.97) - t.box(FONT).right()) < 12), "each beside its line");
            List<Shape> lines = chart.drawing().flat().stream().filter(i -> i instanceof Shape s && s.style().dash() == Dash.DASHED).map(Shape.class::cast).toList();
            assertEquals(3, lines.size(), "run " + run);
            Shape bars = chart.drawing().flat().stream().filter(i -> i instanceof Shape s && s.style().fillOpacity() == 0.55).map(Shape.class::cast).findFirst().orElseThrow();
            assertEquals(0, lines.stream().filter(l -> l.path().bounds().y() <= chart.plot().y() + 10).count(), "lines end at their names");
            for (Text a : names) {
                Box letters = new Box(a.box(FONT).x(), a.y() - 8, a.box(FONT).width(), 8);
                assertTrue(letters.x() >= 0 && letters.right() <= chart.drawing().width() && letters.y() >= chart.plot().y() && letters.bottom() <= bars.path().bounds().y(), "run " + run + ": " + a);
                assertTrue(names.stream().allMatch(b -> a == b || !letters.overlaps(new Box(b.box(FONT).x(), b.y() - 8, b.box(FONT).width(), 8))), "run " + run + ": " + a.text());
                assertTrue(lines.stream().noneMatch(l -> letters.overlaps(new Box(l.path().bounds().x() - 0.1, l.path().bounds().y(), 0.2, l.path().bounds().height()))), "run " + run + ": " + a.text());
            }
        }
    }

    @Test
    void namesOfBarsThatAreTooLongKeepTheirEnds() {
        List<BarChart.Bar> bars = List.of(new BarChart.Bar("thickness lost under the thread, high", 4, Role.INK), new BarChart.Bar("thickness lost under the thread, low", 3, Role.INK));
        List<String> names = texts(new BarChart("b", "%", 1, bars).draw(240, FONT).drawing());
        assertTrue(names.stream().anyMatch(t -> t.matches("thick.*\u2026.*, high")) && names.stream().anyMatch(t -> t.matches("thick.*\u2026.*, low")), names.toString());
        assertTrue(texts(new BarChart("b", "%", 1, bars).draw(640, FONT).drawing()).containsAll(bars.stream().map(BarChart.Bar::name).toList()));
    }

    private static double[] tops(Shape bars) {
        List<Double> tops = new ArrayList<>();
        bars.path().walk(new culm.figures.PathSink() {
            private int lines;

            @Override
            public void move(double x, double y) {
                lines = 0;
            }

            @Override
            public void line(double x, double y) {
                if (lines++ == 0) {
                    tops.add(y);
                }
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                throw new AssertionError("bars are straight");
            }

            @Override
            public void close() {
                assertEquals(3, lines);
            }
        });
        return tops.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Test
    void barsGoBothWaysFromZeroAndUnknownOnesAreADash() {
        ChartDrawing chart = new BarChart("b", "mm", 2, List.of(new BarChart.Bar("a", -0.82, Role.INK), new BarChart.Bar("b", 0.61, Role.INK),
                new BarChart.Bar("c", Double.NaN, Role.INK))).draw(400, FONT);
        List<Box> bars = chart.drawing().flat().stream().filter(Shape.class::isInstance).map(Shape.class::cast).filter(s -> s.style().fill().isPresent())
                .map(s -> s.path().bounds()).toList();
        assertEquals(2, bars.size());
        assertEquals(chart.x().at(0), bars.get(0).right(), 1e-9);
        assertEquals(chart.x().at(-0.82), bars.get(0).x(), 1e-9);
        assertEquals(chart.x().at(0.61), bars.get(1).right(), 1e-9);
        assertTrue(texts(chart.drawing()).contains("\u2013"));
    }

    @Test
    void emptyChartsSaySo() {
        assertTrue(texts(new Chart("c", X, Y, List.of(), List.of(), false).draw(400, 260, FONT).drawing()).contains("nothing to show yet"));
        assertTrue(texts(new Histogram("h", Y, new double[] {Double.NaN}, List.of(), null).draw(400, 260, FONT).drawing()).contains("nothing to show yet"));
        assertTrue(new BarChart("b", "", 1, List.of()).draw(300, FONT).drawing().height() > 0);
    }
}
