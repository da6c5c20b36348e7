package culm.figures.chart;


import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Part;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.Ticks;

/** Axes, ticks and grid of a chart; leaves as much room as the numbers need. */
final class Frame {
    private static final double TOP = 46;
    private static final double BOTTOM = 44;
    private static final double RIGHT = 16;
    private static final double NUMBER_APART = 1.8;
    private static final int LEAST_TICKS = 6;
    private static final int FEWEST = 3;
    private static final double LINE_APART = 32;
    private final TextMeasure measure;
    private final Ticks ticksX;
    private final Ticks ticksY;
    private final Box plot;
    private final Axis x;
    private final Axis y;

    /** @param xFrom smallest value across, and so on; equal ends are widened; @param wholeAcross whether only whole numbers stand across */
    Frame(double width, double height, double xFrom, double xTo, double yFrom, double yTo, double legend, TextMeasure measure, boolean wholeAcross) {
        this.measure = measure;
        double[] xs = widened(xFrom, xTo);
        double[] ys = widened(yFrom, yTo);
        double top = TOP + legend;
        double plotHeight = Math.max(20, height - top - BOTTOM);
        ticksY = upwards(ys[0], ys[1], plotHeight);
        double numbers = ticksY.values().stream().mapToDouble(v -> measure.width(ticksY.label(v), Size.SMALL, false)).max().orElse(0);
        double left = 12 + numbers + 8;
        double plotWidth = Math.max(20, width - left - RIGHT);
        ticksX = readable(xs[0], xs[1], plotWidth, wholeAcross);
        plot = new Box(left, top, plotWidth, plotHeight);
        x = new Axis(xs[0], xs[1], plot.x(), plot.right());
        y = new Axis(ys[0], ys[1], plot.bottom(), plot.y());
    }

    /** Ticks well apart; where these are fewer than three, closer ones as far as their numbers have room. */
    private Ticks upwards(double from, double to, double height) {
        Ticks ticks = Ticks.within(from, to, Math.max(1, height / LINE_APART));
        double line = measure.line(Size.SMALL) + 1;
        for (int most = 2; ticks.values().size() < FEWEST && most <= height / line; most++) {
            Ticks closer = Ticks.within(from, to, most);
            ticks = closer.step() / (to - from) * height >= line ? closer : ticks;
        }
        return ticks;
    }

    /** As many ticks as the numbers leave room for. */
    private Ticks readable(double from, double to, double width, boolean whole) {
        for (int most = (int) Math.max(LEAST_TICKS, width / 45);; most--) {
            double step = Ticks.niceStep((to - from) / Math.max(1, most));
            Ticks ticks = Ticks.stepped(from, to, whole ? Math.max(1, step) : step);
            double widest = ticks.values().stream().mapToDouble(v -> measure.width(ticks.label(v), Size.SMALL, false)).max().orElse(0);
            if (most <= 1 || widest * NUMBER_APART <= ticks.step() / (to - from) * width) {
                return ticks;
            }
        }
    }

    private static double[] widened(double from, double to) {
        if (to > from) {
            return new double[] {from, to};
        }
        double room = from == 0 ? 1 : Math.abs(from) * 0.05;
        return new double[] {from - room, from + room};
    }

    Box plot() {
        return plot;
    }

    Axis x() {
        return x;
    }

    Axis y() {
        return y;
    }

    /** Caption above, grid, numbers, and what the axes measure. */
    void draw(Pen pen, String caption, AxisLabel across, AxisLabel up) {
        pen.text(caption, 12, 16, Anchor.START, Size.BODY, Role.INK);
        pen.group(Part.AXIS, "", p -> {
            for (double v : ticksY.values()) {
                p.line(plot.x(), y.at(v), plot.right(), y.at(v), v == 0 ? Role.RULE : Role.GRID, Style.THIN);
                p.text(ticksY.label(v), plot.x() - 6, y.at(v) + 4, Anchor.END, Size.SMALL, Role.QUIET);
            }
            for (double v : ticksX.values()) {
                p.line(x.at(v), plot.bottom(), x.at(v), plot.bottom() + 4, Role.QUIET, Style.THIN);
                p.text(ticksX.label(v), x.at(v), plot.bottom() + 17, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            }
            p.line(plot.x(), plot.bottom(), plot.right(), plot.bottom(), Role.QUIET, 1);
            p.add(new Text(across.text(), plot.right(), plot.bottom() + 34, Anchor.END, Size.SMALL, false, Role.QUIET, 0));
            p.add(new Text(up.text(), plot.x(), plot.y() - 9, Anchor.START, Size.SMALL, false, Role.QUIET, 0));
        });
    }
}
