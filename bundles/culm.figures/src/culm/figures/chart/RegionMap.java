package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Item;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * A map of two numbers: regions as tints with their names, and lines on which a third has one value.
 *
 * @param caption what is shown
 * @param across  the axis across
 * @param up      the axis up
 * @param x       the columns' values, ascending
 * @param y       the rows' values, ascending
 * @param marks   a bit for each thing that is wrong at a crossing, [row][column]; 0 where all is well
 * @param values  the third number, likewise; NaN where there is none
 * @param levels  its lines
 * @param names   names of regions
 */
public record RegionMap(String caption, AxisLabel across, AxisLabel up, double[] x, double[] y, int[][] marks, double[][] values, List<Level> levels, List<Name> names) {
    private static final double FINE = 0.25;
    private static final double LEAST = 0.08;
    private static final double EACH = 0.07;
    private static final int MOST = 4;

    /** A line of one value. */
    public record Level(double value, String name, Role role, Dash dash) {
    }

    /** A region's name at the crossing that lies deepest in it. */
    public record Name(String words, int column, int row, boolean fine) {
    }

    public RegionMap {
        levels = List.copyOf(levels);
        names = List.copyOf(names);
    }

    /** Draws it. @param width at least 160; @param height at least 120, drawing units */
    public ChartDrawing draw(double width, double height, TextMeasure measure) {
        List<Series> lines = new ArrayList<>();
        levels.forEach(l -> lines.add(new Series(l.name(), Contour.at(l.value(), x, y, values), true, Series.Marker.NONE, l.role(), l.dash())));
        List<double[]> contours = lines.stream().flatMap(l -> l.points().stream()).toList();
        lines.add(Series.points("", List.of(new double[] {x[0], y[0]}, new double[] {x[x.length - 1], y[y.length - 1]}), Series.Marker.NONE, Role.QUIET));
        ChartDrawing chart = new Chart(caption, across, up, lines, List.of(), false).draw(width, height, measure, 0);
        Pen pen = new Pen();
        tints(pen, chart.x(), chart.y());
        List<Item> items = new ArrayList<>(pen.items());
        items.addAll(chart.drawing().items());
        Pen labels = new Pen();
        RegionNames placed = new RegionNames(this, chart, contours, measure);
        names.forEach(name -> placed.draw(labels, name));
        items.addAll(labels.items());
        Drawing d = chart.drawing();
        return new ChartDrawing(new Drawing(d.width(), d.height(), d.title(), "Regions in which the same is wrong, and lines of equal value", items), chart.plot(), chart.x(), chart.y());
    }

    /** Runs of crossings along a row with the same marks, as one box each. */
    private void tints(Pen pen, Axis right, Axis upwards) {
        for (int r = 0; r < y.length; r++) {
            double low = upwards.at(r == 0 ? y[0] : (y[r - 1] + y[r]) / 2);
            double high = upwards.at(r == y.length - 1 ? y[r] : (y[r] + y[r + 1]) / 2);
            int start = 0;
            for (int c = 1; c <= x.length; c++) {
                if (c == x.length || marks[r][c] != marks[r][start]) {
                    double left = right.at(start == 0 ? x[0] : (x[start - 1] + x[start]) / 2);
                    double end = right.at(c == x.length ? x[c - 1] : (x[c - 1] + x[c]) / 2);
                    int bits = Integer.bitCount(marks[r][start]);
                    Style style = bits == 0 ? Style.tint(Role.FITS, FINE) : Style.tint(Role.DOES_NOT, LEAST + EACH * Math.min(MOST, bits));
                    pen.shape(Path.box(new Box(Math.min(left, end), Math.min(low, high), Math.abs(end - left), Math.abs(low - high))), style);
                    start = c;
                }
            }
        }
    }
}
