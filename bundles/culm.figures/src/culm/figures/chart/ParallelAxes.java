package culm.figures.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Clip;
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
 * Many numbers side by side: an upright axis for each, and a line through all of them for each thing. The outer axes have their numbers outside, where no line
 * runs; at the others lines are paler behind a number, and it makes way for a strong one.
 *
 * @param caption what is shown
 * @param axes    from the left; at least one
 * @param lines   the things, the last painted on top
 */
public record ParallelAxes(String caption, List<Upright> axes, List<Line> lines) {
    private static final double TOP = 62;
    private static final double BOTTOM = 18;
    private static final double TICK_ROOM = 30;
    private static final double HALO = 0.8;
    private static final double TRIED_ROOM = 20;
    private static final double STRONG = 2;
    private static final double MOST_ASIDE = 14;
    /** From an axis to its numbers: a line that comes level to them is not read as their minus. */
    private static final double GAP = 9;

    /**
     * One axis.
     *
     * @param label its words
     * @param names names of the values 0, 1, 2, ...; empty for numbers
     * @param tried the values that numbers stand at where they have room; where they have none, or there are none, round numbers stand along the axis
     */
    public record Upright(String label, List<String> names, List<Tried> tried) {
        public Upright {
            names = List.copyOf(names);
            tried = List.copyOf(tried);
        }

        /** An axis with round numbers. */
        public Upright(String label, List<String> names) {
            this(label, names, List.of());
        }
    }

    /** A value as it is written. */
    public record Tried(double value, String words) {
    }

    /** One thing: a value for each axis, NaN where it has none; its colour and width. One of width 2 or more is strong: it lies above all others and is never broken. */
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
        List<Line> strong = lines.stream().filter(l -> l.width() >= STRONG).toList();
        Pen numbers = new Pen();
        pen.group(Part.SERIES, caption, p -> lines.stream().filter(l -> l.width() < STRONG).forEach(line -> line(p, line, up, room)));
        pen.group(Part.AXIS, "", p -> {
            for (int i = 0; i < axes.size(); i++) {
                numbers(p, numbers, i, up, room, strong, measure);
            }
        });
        pen.group(Part.SERIES, caption, p -> strong.forEach(line -> line(p, line, up, room)));
        pen.group(Part.AXIS, "", p -> {
            for (int i = 0; i < axes.size(); i++) {
                double x = 12 + room * (i + 0.5);
                p.line(x, up.get(i).start(), x, up.get(i).end(), Role.INK, 1);
                p.text(Clip.to(axes.get(i).label(), measure, Size.BODY, room * 1.9 - 8), x, level || i % 2 != 0 ? TOP - 13 : TOP - 28, Anchor.MIDDLE, Size.BODY, Role.INK);
            }
            numbers.items().forEach(p::add);
        });
        if (lines.isEmpty()) {
            pen.text("nothing to show yet", w / 2, h / 2, Anchor.MIDDLE, Size.BODY, Role.QUIET);
        }
        Box plot = new Box(12, TOP, w - 24, h - BOTTOM - TOP);
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

    /** @param halos gets what makes lines paler; @param pen gets the numbers of an axis or the names */
    private void numbers(Pen halos, Pen pen, int axis, List<Axis> up, double room, List<Line> strong, TextMeasure measure) {
        double x = 12 + room * (axis + 0.5);
        Axis here = up.get(axis);
        boolean outside = axis == 0 || axis == axes.size() - 1;
        for (Tried tick : ticks(axes.get(axis), here)) {
            String words = axes.get(axis).names().isEmpty() ? tick.words() : Clip.to(tick.words(), measure, Size.SMALL, room / 2 - GAP - 4);
            double y = here.at(tick.value());
            double wide = measure.width(words, Size.SMALL, false);
            Box box = new Box(x + GAP, y - 5, wide, 10);
            if (!outside) {
                for (Line line : strong) {
                    box = box.moved(0, aside(box, x, room, here.at(line.values()[axis]), up.get(axis + 1).at(line.values()[axis + 1])));
                }
                halos.shape(Path.box(new Box(box.x() - 2, box.y() - 1, wide + 4, 12)), Style.tint(Role.PAPER, HALO));
            }
            pen.line(x - 4, y, x, y, Role.INK, Style.THIN);
            pen.text(words, axis == 0 ? x - GAP : x + GAP, box.y() + 9, axis == 0 ? Anchor.END : Anchor.START, Size.SMALL, Role.QUIET);
        }
    }

    private static List<Tried> ticks(Upright axis, Axis up) {
        List<Tried> ticks = new ArrayList<>();
        if (!axis.names().isEmpty()) {
            for (int i = 0; i < axis.names().size(); i++) {
                ticks.add(new Tried(i, axis.names().get(i)));
            }
            return ticks;
        }
        List<Tried> tried = axis.tried().stream().filter(t -> t.value() >= up.from() && t.value() <= up.to()).sorted(Comparator.comparingDouble(Tried::value)).toList();
        boolean apart = tried.size() > 1;
        for (int i = 1; i < tried.size(); i++) {
            apart &= up.at(tried.get(i - 1).value()) - up.at(tried.get(i).value()) >= TRIED_ROOM;
        }
        if (apart) {
            return tried;
        }
        Ticks round = Ticks.within(up.from(), up.to(), Math.max(1, (up.start() - up.end()) / TICK_ROOM));
        round.values().forEach(v -> ticks.add(new Tried(v, round.label(v))));
        return ticks;
    }

    /** How far up or down a number makes way for a line to the next axis; not at all where that is too far. */
    private static double aside(Box number, double x, double room, double here, double next) {
        if (!Double.isFinite(here + next)) {
            return 0;
        }
        double a = here + (next - here) * (number.x() - 2 - x) / room;
        double b = here + (next - here) * (number.right() + 2 - x) / room;
        double up = Math.min(a, b) - 3 - number.bottom();
        double down = Math.max(a, b) + 3 - number.y();
        double nearer = -up <= down ? up : down;
        return up >= 0 || down <= 0 || Math.abs(nearer) > MOST_ASIDE ? 0 : nearer;
    }
}
