package culm.figures.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
import culm.figures.font.ShippedFont;

/** Maps, parallel axes and intervals put values where their axes say. */
class ExploringChartsTest {
    private static final TextMeasure FONT = ShippedFont.load();

    private static List<Text> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    private static RegionMap plane() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {10, 20, 30};
        double[][] values = new double[y.length][x.length];
        int[][] marks = new int[y.length][x.length];
        for (int r = 0; r < y.length; r++) {
            for (int c = 0; c < x.length; c++) {
                values[r][c] = x[c];
                marks[r][c] = x[c] > 1.5 ? 1 : 0;
            }
        }
        return new RegionMap("map", new AxisLabel("across", ""), new AxisLabel("up", ""), x, y, marks, values, List.of(new RegionMap.Level(1, "one", Role.INK, Dash.SOLID)),
                List.of(new RegionMap.Name("works", 0, 1, true), new RegionMap.Name("fails: turns left", 4, 1, false)));
    }

    @Test
    void aLineLiesWhereItsValueIsAndRegionsMeetHalfWay() {
        ChartDrawing chart = plane().draw(500, 300, FONT);
        assertEquals(0, chart.x().value(chart.plot().x()), 1e-9, "a map ends where its values do");
        assertEquals(4, chart.x().value(chart.plot().right()), 1e-9);
        List<Shape> shapes = chart.drawing().flat().stream().filter(Shape.class::isInstance).map(Shape.class::cast).toList();
        Box fits = shapes.stream().filter(s -> s.style().fill().equals(java.util.Optional.of(Role.FITS))).findFirst().orElseThrow().path().bounds();
        assertEquals(chart.x().at(0), fits.x(), 1e-9);
        assertEquals(chart.x().at(1.5), fits.right(), 1e-9);
        Box level = shapes.stream().filter(s -> s.style().stroke().equals(java.util.Optional.of(Role.INK)) && s.path().bounds().height() > 100).findFirst().orElseThrow().path().bounds();
        assertEquals(chart.x().at(1), level.x(), 1e-9);
        assertEquals(0, level.width(), 1e-9);
    }

    @Test
    void namesOfRegionsStayInsideAndApart() {
        SplittableRandom random = new SplittableRandom(8);
        RegionMap plane = plane();
        for (int run = 0; run < 200; run++) {
            List<RegionMap.Name> names = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                names.add(new RegionMap.Name("fails: turns left, pinched " + i, random.nextInt(5), random.nextInt(3), false));
            }
            RegionMap map = new RegionMap("map", plane.across(), plane.up(), plane.x(), plane.y(), plane.marks(), plane.values(), plane.levels(), names);
            ChartDrawing chart = map.draw(random.nextDouble(260, 900), random.nextDouble(160, 500), FONT);
            List<Text> drawn = texts(chart.drawing()).stream().filter(t -> t.role() == Role.DOES_NOT).toList();
            assertFalse(drawn.isEmpty());
            for (Text a : drawn) {
                Box box = a.box(FONT);
                assertTrue(box.x() >= chart.plot().x() && box.right() <= chart.plot().right(), "run " + run + ": " + a.text());
                assertTrue(drawn.stream().allMatch(b -> a == b || !b.box(FONT).overlaps(box)), "run " + run + ": names lie on each other");
            }
        }
    }

    @Test
    void aNameLiesOnNoLineAndANarrowRegionHasItsNameBesideIt() {
        double[] x = new double[41];
        double[] y = new double[41];
        int[][] marks = new int[41][41];
        double[][] values = new double[41][41];
        for (int r = 0; r < 41; r++) {
            x[r] = r;
            y[r] = r;
            for (int c = 0; c < 41; c++) {
                values[r][c] = (r - 20) / 8.0 - (c - 20) / 24.0;
                marks[r][c] = (c == 0 ? 2 : 0) | (Math.abs(values[r][c]) > 1 ? 1 : 0);
            }
        }
        RegionMap map = new RegionMap("map", new AxisLabel("across", ""), new AxisLabel("up", ""), x, y, marks, values, List.of(new RegionMap.Level(0, "none", Role.INK, Dash.SOLID)),
                List.of(new RegionMap.Name("passes every rule", 20, 20, true), new RegionMap.Name("fails: finished length", 0, 14, false)));
        ChartDrawing chart = map.draw(640, 460, FONT);
        Text fine = texts(chart.drawing()).stream().filter(t -> t.text().equals("passes every rule")).findFirst().orElseThrow();
        Box box = fine.box(FONT);
        double slope = (chart.y().at(20 + 1 / 3.0) - chart.y().at(20)) / (chart.x().at(21) - chart.x().at(20));
        for (double at = box.x(); at <= box.right(); at++) {
            double line = chart.y().at(20) + slope * (at - chart.x().at(20));
            assertTrue(line < box.y() || line > box.bottom(), "the line runs through its name");
            double edge = Math.abs(chart.y().at(28) - chart.y().at(20));
            assertTrue(box.y() > line - edge && box.bottom() < line + edge, "the name lies within its region");
        }
        Text narrow = texts(chart.drawing()).stream().filter(t -> t.text().equals("fails: finished length")).findFirst().orElseThrow();
        List<Box> leaders = chart.drawing().flat().stream().filter(i -> i instanceof Shape s && s.style().stroke().equals(java.util.Optional.of(Role.DOES_NOT)))
                .map(i -> ((Shape) i).path().bounds()).toList();
        assertEquals(1, leaders.size(), "only the narrow one has a line to its name");
        assertEquals(chart.x().at(0), leaders.get(0).x(), 1e-9);
        assertEquals(narrow.box(FONT).x() - 2, leaders.get(0).right(), 1e-6);
    }

    private static long heights(ChartDrawing drawn, String... words) {
        return texts(drawn.drawing()).stream().filter(t -> List.of(words).contains(t.text())).mapToDouble(Text::y).distinct().count();
    }

    @Test
    void aLineCrossesEachParallelAxisAtItsValue() {
        List<ParallelAxes.Upright> axes = List.of(new ParallelAxes.Upright("tie length", List.of()), new ParallelAxes.Upright("staple", List.of("47", "46")));
        ParallelAxes chart = new ParallelAxes("c", axes, List.of(new ParallelAxes.Line(new double[] {70, 0}, Role.RULE, 1), new ParallelAxes.Line(new double[] {74, 1}, Role.RULE, 1),
                new ParallelAxes.Line(new double[] {71, 1}, Role.FITS, 1)));
        ChartDrawing drawn = chart.draw(400, 300, FONT);
        Box line = drawn.drawing().flat().stream().filter(Shape.class::isInstance).map(Shape.class::cast).filter(s -> s.style().stroke().equals(java.util.Optional.of(Role.FITS)))
                .findFirst().orElseThrow().path().bounds();
        assertEquals(drawn.y().at(71), line.bottom(), 1e-9);
        assertEquals(drawn.plot().y(), line.y(), 1e-9, "the last part stands at the top");
        assertTrue(texts(drawn.drawing()).stream().map(Text::text).toList().containsAll(List.of("tie length", "staple", "47", "46")));
        assertEquals(1, heights(drawn, "tie length", "staple"), "heads that have room stand in one line");
        List<ParallelAxes.Upright> wide = List.of(new ParallelAxes.Upright("thickness lost under the thread", List.of()), new ParallelAxes.Upright("staple", List.of("47", "46")));
        assertEquals(2, heights(new ParallelAxes("c", wide, chart.lines()).draw(300, 300, FONT), "thickness lost under the thread", "staple"));
    }

    @Test
    void whatTouchesAnAxisStandsClearOfItsNumbers() {
        List<ParallelAxes.Upright> axes = List.of(new ParallelAxes.Upright("tie length", List.of()), new ParallelAxes.Upright("all widths", List.of()));
        ChartDrawing drawn = new ParallelAxes("c", axes, List.of(new ParallelAxes.Line(new double[] {70, 0}, Role.FITS, 1), new ParallelAxes.Line(new double[] {74, 1}, Role.FITS, 1)))
                .draw(400, 300, FONT);
        List<Box> ink = drawn.drawing().flat().stream().filter(Shape.class::isInstance).map(Shape.class::cast).filter(s -> s.style().stroke().equals(java.util.Optional.of(Role.INK)))
                .map(s -> s.path().bounds()).toList();
        List<Text> numbers = texts(drawn.drawing()).stream().filter(t -> t.role() == Role.QUIET).toList();
        assertTrue(numbers.size() > 4);
        for (Text number : numbers) {
            double apart = number.anchor() == Anchor.END ? ink.stream().mapToDouble(Box::x).filter(left -> left >= number.x()).min().orElseThrow() - number.x()
                    : number.x() - ink.stream().mapToDouble(Box::right).filter(right -> right <= number.x()).max().orElseThrow();
            assertTrue(apart >= (number.anchor() == Anchor.END ? 4.5 : 8), number.text() + " stands " + apart + " from its axis and its tick");
        }
    }

    @Test
    void noNumberLiesOnTheStrongLineWhichIsNeverBroken() {
        List<ParallelAxes.Upright> axes = List.of(new ParallelAxes.Upright("tie length", List.of()), new ParallelAxes.Upright("all widths", List.of()),
                new ParallelAxes.Upright("turns left", List.of()));
        SplittableRandom random = new SplittableRandom(31);
        for (int run = 0; run < 200; run++) {
            double middle = random.nextInt(11) / 10.0;
            double end = middle + random.nextDouble(-0.2, 0.2);
            double[] strong = {70.5, middle, Math.max(0, Math.min(1, end))};
            ParallelAxes chart = new ParallelAxes("c", axes, List.of(new ParallelAxes.Line(new double[] {70, 0, 0}, Role.FITS, 1), new ParallelAxes.Line(new double[] {74, 1, 1}, Role.FITS, 1),
                    new ParallelAxes.Line(strong, Role.THREAD, 3)));
            double width = random.nextDouble(420, 1100);
            ChartDrawing drawn = chart.draw(width, 420, FONT);
            List<culm.figures.Item> items = drawn.drawing().flat();
            int line = items.indexOf(items.stream().filter(i -> i instanceof Shape s && s.style().stroke().equals(java.util.Optional.of(Role.THREAD))).findFirst().orElseThrow());
            assertTrue(items.subList(line, items.size()).stream().noneMatch(i -> i instanceof Shape s && s.style().fill().isPresent()), "nothing covers the strong line");
            double room = (width - 24) / 3;
            double bottom = drawn.plot().bottom();
            double high = drawn.plot().height();
            for (Text number : texts(drawn.drawing())) {
                double from = number.x() - 12 - 1.5 * room;
                if (number.role() == Role.QUIET && number.anchor() == Anchor.START && from > 0 && from < room / 2) {
                    for (double along = from; along <= from + FONT.width(number.text(), number.size(), false); along++) {
                        double y = bottom - high * (strong[1] + (strong[2] - strong[1]) * along / room);
                        assertTrue(y <= number.y() - 8 || y >= number.y(), number.text() + " lies on the line from " + strong[1] + " to " + strong[2]);
                    }
                }
            }
        }
    }

    @Test
    void numbersStandAtTheValuesThatWereTriedWhereTheyHaveRoom() {
        List<ParallelAxes.Tried> tried = new ArrayList<>();
        List<ParallelAxes.Line> lines = new ArrayList<>();
        for (double v = 70; v <= 74; v += 0.5) {
            tried.add(new ParallelAxes.Tried(v, String.format(java.util.Locale.ROOT, "%.1f", v)));
            lines.add(new ParallelAxes.Line(new double[] {v, v - 70}, Role.FITS, 1));
        }
        ParallelAxes chart = new ParallelAxes("c", List.of(new ParallelAxes.Upright("tie length", List.of(), tried), new ParallelAxes.Upright("turns left", List.of())), lines);
        ChartDrawing drawn = chart.draw(600, 480, FONT);
        List<Text> numbers = texts(drawn.drawing()).stream().filter(t -> t.role() == Role.QUIET && t.anchor() == Anchor.END).toList();
        assertEquals(tried.stream().map(ParallelAxes.Tried::words).toList(), numbers.stream().map(Text::text).toList());
        assertEquals(drawn.y().at(70.5) + 4, numbers.get(1).y(), 1e-9);
        assertTrue(texts(chart.draw(600, 160, FONT).drawing()).stream().noneMatch(t -> t.text().equals("70.5")), "round numbers where there is no room for all");
    }

    @Test
    void namesOfSharesAreNeverCutAndNeverLieOnOthers() {
        for (double width : new double[] {330, 450, 640, 900}) {
            List<IntervalChart.Row> rows = Arrays.asList(new IntervalChart.Row("the end of the cane lies under the wrap and above the cork", 0.5, 0.4, 0.6, "50.0 % (40.0 to 60.0)", Role.THREAD),
                    new IntervalChart.Row("all rules", Double.NaN, 0, 1, "none", Role.THREAD));
            IntervalChart chart = new IntervalChart("c", rows);
            Drawing drawing = chart.draw(width, 20, FONT);
            assertEquals(chart.height(width, 20, FONT), drawing.height(), 1e-9);
            List<Text> all = texts(drawing);
            assertEquals(width > 430, all.stream().anyMatch(t -> t.text().equals(rows.get(0).name())), "whole where a line has room for it");
            for (Text a : all) {
                assertTrue(a.box(FONT).right() <= Math.max(320, width) + 1e-9 && a.box(FONT).x() >= 0, a.text() + " at " + width);
                assertTrue(all.stream().allMatch(b -> a == b || !shrunk(a).overlaps(shrunk(b))), a.text() + " at " + width);
            }
        }
    }

    /** Without what the font's box has above and below its letters. */
    private static Box shrunk(Text text) {
        Box box = text.box(FONT);
        return new Box(box.x(), box.y() + 3, box.width(), box.height() - 6);
    }
}
