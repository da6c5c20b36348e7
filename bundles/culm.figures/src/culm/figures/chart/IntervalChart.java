package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Clip;
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
    private static final double LINE = 170;
    private static final double NAME = 14;

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

    /** Height it needs. @param width drawing units; @param row height of a row whose name has room beside its line */
    public double height(double width, double row, TextMeasure measure) {
        return TOP + high(Math.max(LEAST, width), row, measure) * rows.size() + 10;
    }

    private double texts(TextMeasure measure) {
        return rows.stream().mapToDouble(r -> measure.width(r.words(), Size.SMALL, false)).max().orElse(0);
    }

    private double names(TextMeasure measure) {
        return rows.stream().mapToDouble(r -> measure.width(r.name(), Size.BODY, false)).max().orElse(0);
    }

    /** Where names would leave too little room for the lines they stand above them. */
    private boolean above(double width, TextMeasure measure) {
        return width - texts(measure) - names(measure) < LINE;
    }

    private double high(double width, double row, TextMeasure measure) {
        return above(width, measure) ? row + NAME : row;
    }

    /** Draws it. @param width at least 320; @param row height of a row whose name has room beside its line, drawing units */
    public Drawing draw(double width, double row, TextMeasure measure) {
        double w = Math.max(LEAST, width);
        boolean above = above(w, measure);
        double high = high(w, row, measure);
        Axis x = new Axis(0, 1, 12 + (above ? 14 : names(measure) + 14), w - 12 - texts(measure) - 14);
        double bottom = TOP + high * rows.size();
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
                row(p, rows.get(i), x, w, TOP + high * i + (above ? NAME : 0) + row / 2, above ? TOP + high * i + NAME : Double.NaN, measure);
            }
        });
        List<String> words = new ArrayList<>();
        rows.forEach(r -> words.add(r.name() + " " + r.words()));
        return pen.drawing(w, bottom + 10, caption, String.join("; ", words) + ".");
    }

    private static void row(Pen p, Row r, Axis x, double width, double y, double nameAt, TextMeasure measure) {
        p.text(Clip.to(r.name(), measure, Size.BODY, width - 24), 12, Double.isNaN(nameAt) ? y + 4.5 : nameAt, Anchor.START, Size.BODY, Role.INK);
        p.text(r.words(), width - 12, y + 4, Anchor.END, Size.SMALL, Role.QUIET);
        if (Double.isFinite(r.value())) {
            p.line(x.at(r.low()), y, x.at(r.high()), y, r.role(), 2.4);
            p.shape(Path.circle(x.at(r.value()), y, 5), Style.fill(r.role()).edged(Role.PAPER, Style.THIN));
        }
    }
}
