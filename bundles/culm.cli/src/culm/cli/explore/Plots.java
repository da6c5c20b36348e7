package culm.cli.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import culm.blank.Limits;
import culm.explore.Effect;
import culm.explore.Sensitivities;
import culm.explore.ToleranceResult;
import culm.explore.TwoWayMap;
import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Item;
import culm.figures.Palette;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.BarChart;
import culm.figures.chart.Chart;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.Histogram;
import culm.figures.chart.Series;
import culm.figures.chart.Span;
import culm.figures.font.ShippedFont;
import culm.figures.svg.SvgWriter;

/** What exploring found, as SVG by file name. */
final class Plots {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 400;
    private static final int SAMPLES = 2000;
    private static final int BARS = 16;
    private static final int LEAST_LABELLED = 150;

    private Plots() {
    }

    static Map<String, String> tolerances(ToleranceResult r, Limits limits) {
        TextMeasure measure = ShippedFont.load();
        double[] turns = IntStream.range(0, SAMPLES).mapToDouble(i -> r.turns().percentile((i + 0.5) * 100 / SAMPLES)).toArray();
        Span allowed = new Span(limits.get(Limits.TURNS_FEWEST), limits.get(Limits.TURNS_MOST), "allowed", Role.FITS);
        double[] marks = {r.turns().percentile(5), r.turns().percentile(50), r.turns().percentile(95)};
        Map<String, String> all = new LinkedHashMap<>();
        all.put("turns-left.svg", svg(new Histogram("Turns left", new AxisLabel("turns left", ""), turns, marks, allowed).draw(WIDTH, HEIGHT, measure).drawing()));
        List<BarChart.Bar> bars = r.causes().stream().limit(BARS).map(c -> new BarChart.Bar(c.label() + ", " + c.where(), 100 * c.weight(), c.certain() ? Role.DOES_NOT : Role.QUIET)).toList();
        all.put("causes.svg", svg(new BarChart("Inputs behind failures: worst third minus best", "%", 1, bars).draw(WIDTH, measure).drawing()));
        return all;
    }

    static Map<String, String> matters(Sensitivities s) {
        List<BarChart.Bar> bars = new ArrayList<>();
        for (Effect e : s.effects()) {
            if (e.perTolerance() != 0 && bars.size() < BARS) {
                bars.add(new BarChart.Bar(e.label() + (e.measured() ? "" : " (assumed)"), Math.abs(e.perTolerance()), e.measured() ? Role.BRASS : Role.THREAD));
            }
        }
        return Map.of("what-matters.svg", svg(new BarChart("Turns for each input's own give or take", "", 2, bars).draw(WIDTH, ShippedFont.load()).drawing()));
    }

    /** Regions as tints with the rules that fail, and the lines of 0, 1 and 2 turns. */
    static Map<String, String> map(TwoWayMap m) {
        TextMeasure measure = ShippedFont.load();
        double[] x = m.x().values();
        double[] y = m.y().values();
        List<Series> lines = new ArrayList<>();
        lines.add(new Series("0 turns", Contour.at(0, x, y, m.turns()), true, Series.Marker.NONE, Role.THREAD, Dash.SOLID));
        lines.add(new Series("1 turn", Contour.at(1, x, y, m.turns()), true, Series.Marker.NONE, Role.INK, Dash.SOLID));
        lines.add(new Series("2 turns", Contour.at(2, x, y, m.turns()), true, Series.Marker.NONE, Role.BRASS_EDGE, Dash.SOLID));
        lines.add(Series.points("", List.of(new double[] {x[0], y[0]}, new double[] {x[x.length - 1], y[y.length - 1]}), Series.Marker.NONE, Role.QUIET));
        ChartDrawing chart = new Chart("Where it works", new AxisLabel(m.x().label(), ""), new AxisLabel(m.y().label(), ""), lines, List.of(), false)
                .draw(WIDTH, HEIGHT + 80, measure);
        Pen pen = new Pen();
        tints(pen, m, chart.x(), chart.y(), chart.plot());
        List<Item> items = new ArrayList<>(pen.items());
        items.addAll(chart.drawing().items());
        Pen labels = new Pen();
        for (TwoWayMap.Region r : m.regions()) {
            if ((long) r.cells() * LEAST_LABELLED >= (long) x.length * y.length) {
                String text = r.failed().isEmpty() ? "works" : Words.rules(r.failed());
                double half = measure.width(text, Size.SMALL, false) / 2 + 4;
                double at = chart.x().at(x[r.labelX()]);
                double left = chart.plot().x() + half;
                double right = chart.plot().x() + chart.plot().width() - half;
                labels.text(text, Math.max(left, Math.min(right, at)), chart.y().at(y[r.labelY()]), Anchor.MIDDLE, Size.SMALL, r.failed().isEmpty() ? Role.FITS : Role.DOES_NOT);
            }
        }
        items.addAll(labels.items());
        Drawing d = chart.drawing();
        return Map.of("map.svg", svg(new Drawing(d.width(), d.height(), d.title(), "Regions in which the same rules fail, and lines of equal turns left", items)));
    }

    /** Runs of crossings along a row with the same rules, as one box each. */
    private static void tints(Pen pen, TwoWayMap m, Axis across, Axis up, Box plot) {
        double[] x = m.x().values();
        double[] y = m.y().values();
        for (int r = 0; r < y.length; r++) {
            double low = up.at(r == 0 ? y[0] : (y[r - 1] + y[r]) / 2);
            double high = up.at(r == y.length - 1 ? y[r] : (y[r] + y[r + 1]) / 2);
            int start = 0;
            for (int c = 1; c <= x.length; c++) {
                if (c == x.length || m.failed()[r][c] != m.failed()[r][start]) {
                    double left = across.at(start == 0 ? x[0] : (x[start - 1] + x[start]) / 2);
                    double right = across.at(c == x.length ? x[c - 1] : (x[c - 1] + x[c]) / 2);
                    int bits = Integer.bitCount(m.failed()[r][start]);
                    Style style = bits == 0 ? Style.tint(Role.FITS, 0.25) : Style.tint(Role.DOES_NOT, 0.08 + 0.07 * Math.min(4, bits));
                    pen.shape(Path.box(new Box(Math.min(left, right), Math.min(low, high), Math.abs(right - left), Math.abs(low - high))), style);
                    start = c;
                }
            }
        }
    }

    private static String svg(Drawing drawing) {
        return SvgWriter.write(drawing, Palette.PRINT);
    }
}
