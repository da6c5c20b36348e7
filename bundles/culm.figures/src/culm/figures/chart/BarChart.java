package culm.figures.chart;

import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Clip;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * Named bars from left to right of zero, one below the other, the number at the end of each; for shares by maker or for what moves the closing.
 *
 * @param caption what is shown
 * @param unit    unit of the numbers, may be empty
 * @param digits  decimals of the numbers
 * @param bars    the bars, from the top
 */
public record BarChart(String caption, String unit, int digits, List<Bar> bars) {
    private static final double ROW = 22;
    private static final double TOP = 34;

    /** One bar. @param value its length; one that is not finite is shown as a dash */
    public record Bar(String name, double value, Role role) {
    }

    public BarChart {
        bars = List.copyOf(bars);
    }

    /** Draws it; the height follows from the number of bars. */
    public ChartDrawing draw(double width, TextMeasure measure) {
        double w = Math.max(200, width);
        double names = bars.stream().mapToDouble(b -> measure.width(b.name(), Size.BODY, false)).max().orElse(0);
        names = Math.min(names, w * 0.6);
        double numbers = bars.stream().mapToDouble(b -> measure.width(number(b), Size.BODY, true)).max().orElse(0) + 8;
        double low = bars.stream().mapToDouble(Bar::value).filter(Double::isFinite).min().orElse(0);
        double high = bars.stream().mapToDouble(Bar::value).filter(Double::isFinite).max().orElse(1);
        low = Math.min(0, low);
        high = Math.max(high, low == 0 && high <= 0 ? 1 : 0);
        double left = 12 + names + 10 + (low < 0 ? numbers : 0);
        double right = Math.max(left + 20, w - 12 - numbers);
        Axis x = new Axis(low, high, left, right);
        double height = TOP + ROW * Math.max(1, bars.size()) + 12;
        Box plot = new Box(left, TOP, right - left, height - TOP - 8);
        Pen pen = new Pen();
        pen.text(unit.isEmpty() ? caption : caption + ", " + unit, 12, 16, Anchor.START, Size.BODY, Role.INK);
        double nameRoom = names;
        pen.group(Part.SERIES, caption, p -> {
            for (int i = 0; i < bars.size(); i++) {
                bar(p, bars.get(i), x, TOP + i * ROW + ROW / 2, nameRoom, measure);
            }
        });
        pen.line(x.at(0), TOP - 4, x.at(0), TOP + ROW * bars.size() + 2, Role.QUIET, 1);
        Axis y = new Axis(0, Math.max(1, bars.size()), TOP, TOP + ROW * Math.max(1, bars.size()));
        return new ChartDrawing(pen.drawing(w, height, caption, ""), plot, x, y);
    }

    private void bar(Pen p, Bar bar, Axis x, double y, double nameRoom, TextMeasure measure) {
        p.text(Clip.middle(bar.name(), measure, Size.BODY, nameRoom), 12 + nameRoom, y + 4.5, Anchor.END, Size.BODY, Role.INK);
        boolean known = Double.isFinite(bar.value());
        double end = known ? x.at(bar.value()) : x.at(0);
        if (known && end != x.at(0)) {
            p.shape(Path.box(new Box(Math.min(end, x.at(0)), y - 6.5, Math.abs(end - x.at(0)), 13)), Style.tint(bar.role(), 0.75));
        }
        boolean leftwards = known && bar.value() < 0;
        p.bold(number(bar), leftwards ? end - 6 : end + 6, y + 4.5, leftwards ? Anchor.END : Anchor.START, Size.BODY, Role.INK);
    }

    private String number(Bar bar) {
        return Double.isFinite(bar.value()) ? Numbers.fixed(bar.value(), digits) : "\u2013";
    }
}
