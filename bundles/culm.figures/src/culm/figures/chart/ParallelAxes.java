package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.Ticks;

/**
 * Many numbers side by side: an upright axis for each, and a line through all of them for each thing.
 *
 * @param caption what is shown
 * @param axes    from the left; at least one
 * @param lines   the things, the last painted on top
 */
public record ParallelAxes(String caption, List<Upright> axes, List<Line> lines) {
    private static final double TOP = 62;
    private static final double BOTTOM = 18;
    private static final double TICK_ROOM = 30;
    private static final double HALO = 0.9;
    /** From an axis to its numbers: a line that comes level to them is not read as their minus. */
    private static final double GAP = 9;

    /**
     * One axis.
     *
     * @param label its words
     * @param names names of the values 0, 1, 2, ...; empty for numbers
     */
    public record Upright(String label, List<String> names) {
    }

    /** One thing: a value for each axis, NaN where it has none; its colour and width. */
    public record Line(double[] values, Role role, double width) {
    }

    public ParallelAxes {
        axes = List.copyOf(axes);
        lines = List.copyOf(lines);
    }

    /** Draws it. @param width at least 200; @param height at least 160, drawing units */
    public ChartDrawing draw(double width, double height, TextMeasure measure) {
        double w = Math.max(200, width);
        double h = Math.max(160, height);
        double room = (w - 24) / axes.size();
        boolean level = axes.stream().allMatch(a -> measure.width(a.label(), Size.BODY, false) <= room - 8);
        Pen pen = new Pen();
        pen.text(caption, 12, 16, Anchor.START, Size.BODY, Role.INK);
        List<Axis> up = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            up.add(scale(i, h - BOTTOM));
        }
        pen.group(Part.SERIES, caption, p -> lines.forEach(line -> line(p, line, up, room)));
        pen.group(Part.AXIS, "", p -> {
            for (int i = 0; i < axes.size(); i++) {
                axis(p, axes.get(i), up.get(i), 12 + room * (i + 0.5), room, level || i % 2 != 0, measure);
            }
        });
        if (lines.isEmpty()) {
            pen.text("nothing to show yet", w / 2, h / 2, Anchor.MIDDLE, Size.BODY, Role.QUIET);
        }
        culm.figures.Box plot = new culm.figures.Box(12, TOP, w - 24, h - BOTTOM - TOP);
        return new ChartDrawing(pen.drawing(w, h, caption, "A line for each variant through " + axes.size() + " axes"), plot,
                new Axis(0, axes.size(), plot.x(), plot.right()), up.get(0));
    }

    private Axis scale(int axis, double bottom) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            if (Double.isFinite(line.values()[axis])) {
                low = Math.min(low, line.values()[axis]);
                high = Math.max(high, line.values()[axis]);
            }
        }
        if (!axes.get(axis).names().isEmpty()) {
            low = 0;
            high = axes.get(axis).names().size() - 1;
        }
        if (!(low < high)) {
            double middle = Double.isFinite(low) ? low : 0;
            low = middle - 0.5;
            high = middle + 0.5;
        }
        return new Axis(low, high, bottom, TOP);
    }

    private static void line(Pen p, Line line, List<Axis> up, double room) {
        PathBuilder path = Path.start();
        boolean down = false;
        for (int i = 0; i < up.size(); i++) {
            double x = 12 + room * (i + 0.5);
            boolean ok = Double.isFinite(line.values()[i]);
            if (ok && down) {
                path.line(x, up.get(i).at(line.values()[i]));
            } else if (ok) {
                path.move(x, up.get(i).at(line.values()[i]));
            }
            down = ok;
        }
        p.shape(path.path(), Style.line(line.role(), line.width()));
    }

    private static void axis(Pen p, Upright axis, Axis up, double x, double room, boolean low, TextMeasure measure) {
        p.line(x, up.start(), x, up.end(), Role.INK, 1);
        p.text(Names.cut(axis.label(), room * 1.9 - 8, measure), x, low ? TOP - 13 : TOP - 28, Anchor.MIDDLE, Size.BODY, Role.INK);
        if (axis.names().isEmpty()) {
            Ticks ticks = Ticks.within(up.from(), up.to(), Math.max(1, (up.start() - up.end()) / TICK_ROOM));
            ticks.values().forEach(v -> tick(p, measure, x, up.at(v), Numbers.fixed(v, ticks.digits())));
        } else {
            for (int i = 0; i < axis.names().size(); i++) {
                tick(p, measure, x, up.at(i), Names.cut(axis.names().get(i), (room / 2 - GAP - 4) * 13 / 11, measure));
            }
        }
    }

    private static void tick(Pen p, TextMeasure measure, double x, double y, String words) {
        p.shape(Path.box(new culm.figures.Box(x + 1, y - 7, measure.width(words, Size.SMALL, false) + GAP + 1, 14)), Style.tint(Role.PAPER, HALO));
        p.line(x - 4, y, x, y, Role.INK, Style.THIN);
        p.text(words, x + GAP, y + 4, Anchor.START, Size.SMALL, Role.QUIET);
    }
}
