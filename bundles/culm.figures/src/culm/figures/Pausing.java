package culm.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A line up the page that pauses where letters stand, so that they stay readable. */
public final class Pausing {
    /** Left free around letters, drawing units. */
    static final double AROUND = 2;
    /** What is left of it between two labels and no longer than this would look like a mark of its own. */
    static final double SHORTEST = 14;

    private Pausing() {
    }

    /**
     * The line.
     *
     * @param x where it runs, drawing units
     * @param from its upper end, drawing units
     * @param to its lower end, drawing units
     * @param items what stands around it, with their groups
     * @param measure how much room letters take
     * @return the line in pieces; empty when letters take all of it
     */
    public static Path up(double x, double from, double to, List<Item> items, TextMeasure measure) {
        List<double[]> gaps = new ArrayList<>();
        collect(items, 0, 0, x, measure, gaps);
        gaps.sort(Comparator.comparingDouble(g -> g[0]));
        PathBuilder line = Path.start();
        double at = from;
        for (double[] gap : gaps) {
            double end = Math.min(gap[0], to);
            if (end - at > (at == from ? 0 : SHORTEST)) {
                line.move(x, at).line(x, end);
            }
            at = Math.max(at, gap[1]);
        }
        if (to > at) {
            line.move(x, at).line(x, to);
        }
        return line.path();
    }

    private static void collect(List<Item> items, double dx, double dy, double x, TextMeasure measure, List<double[]> gaps) {
        for (Item item : items) {
            if (item instanceof Group group) {
                collect(group.items(), dx + group.dx(), dy + group.dy(), x, measure, gaps);
            } else if (item instanceof Text text) {
                Box box = around(text, measure);
                if (box.x() + dx - AROUND < x && x < box.right() + dx + AROUND) {
                    gaps.add(new double[] {box.y() + dy - AROUND, box.bottom() + dy + AROUND});
                }
            }
        }
    }

    /** The level box around a text, however it is turned. */
    private static Box around(Text text, TextMeasure measure) {
        Box level = text.box(measure);
        if (text.turn() == 0) {
            return level;
        }
        double cos = Math.cos(Math.toRadians(text.turn()));
        double sin = Math.sin(Math.toRadians(text.turn()));
        List<double[]> corners = new ArrayList<>();
        for (double[] c : new double[][] {{level.x(), level.y()}, {level.right(), level.y()}, {level.right(), level.bottom()}, {level.x(), level.bottom()}}) {
            double right = c[0] - text.x();
            double down = c[1] - text.y();
            corners.add(new double[] {text.x() + right * cos - down * sin, text.y() + right * sin + down * cos});
        }
        return Path.polygon(corners).bounds();
    }
}
