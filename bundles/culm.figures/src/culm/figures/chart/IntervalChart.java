package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Drawing;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * Shares with their intervals, one below the other: a dot, a line, and the share in words.
 *
 * @param caption what share it is
 * @param rows    the shares, from the top
 */
public record IntervalChart(String caption, List<Row> rows) {
    private static final double TOP = 44;
    private static final double LEAST = 320;
    private static final double TICK = 25;

    /**
     * One share.
     *
     * @param name  whose
     * @param value 0 to 1; NaN when there is none
     * @param low   lower end of its interval
     * @param high  upper end
     * @param words the share in words, at the right
     * @param role  its colour
     */
    public record Row(String name, double value, double low, double high, String words, Role role) {
    }

    public IntervalChart {
        rows = List.copyOf(rows);
    }

    /** Height that so many rows need, drawing units. */
    public static double height(int rows, double row) {
        return TOP + row * rows + 10;
    }

    /** Draws it. @param width at least 320; @param row height of a row, drawing units */
    public Drawing draw(double width, double row, TextMeasure measure) {
        double w = Math.max(LEAST, width);
        double texts = rows.stream().mapToDouble(r -> measure.width(r.words(), Size.SMALL, false)).max().orElse(0);
        double names = Math.min(Math.max(0.3 * w, w - texts - 150), rows.stream().mapToDouble(r -> measure.width(r.name(), Size.BODY, false)).max().orElse(0));
        Axis x = new Axis(0, 1, 12 + names + 14, w - 12 - texts - 14);
        double bottom = TOP + row * rows.size();
        Pen pen = new Pen();
        pen.text(caption, 12, 18, Anchor.START, Size.BODY, Role.INK);
        double step = (x.end() - x.start()) / 4 < measure.width("100 %", Size.SMALL, false) + 4 ? 2 * TICK : TICK;
        pen.group(Part.AXIS, "axis", p -> {
            for (double percent = 0; percent <= 100; percent += step) {
                p.line(x.at(percent / 100), TOP - 4, x.at(percent / 100), bottom, Role.GRID, Style.THIN);
                p.text((int) percent + " %", x.at(percent / 100), TOP - 8, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            }
        });
        pen.group(Part.SERIES, caption, p -> {
            for (int i = 0; i < rows.size(); i++) {
                Row r = rows.get(i);
                double y = TOP + row * (i + 0.5);
                p.text(Names.cut(r.name(), names, measure), 12, y + 4.5, Anchor.START, Size.BODY, Role.INK);
                p.text(r.words(), w - 12, y + 4, Anchor.END, Size.SMALL, Role.QUIET);
                if (Double.isFinite(r.value())) {
                    p.line(x.at(r.low()), y, x.at(r.high()), y, r.role(), 2.4);
                    p.shape(Path.circle(x.at(r.value()), y, 5), Style.fill(r.role()).edged(Role.PAPER, Style.THIN));
                }
            }
        });
        List<String> words = new ArrayList<>();
        rows.forEach(r -> words.add(r.name() + " " + r.words()));
        return pen.drawing(w, bottom + 10, caption, String.join("; ", words) + ".");
    }
}
