package culm.figures.chart;

import java.util.Arrays;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
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
import culm.figures.label.Label;
import culm.figures.label.LabelRows;
import culm.figures.label.PlacedLabel;

/**
 * How often values occur, as shares of all; bins have round borders. Values that are not finite are not counted, but said.
 *
 * @param caption what is shown
 * @param across  what the values measure
 * @param values  the values
 * @param marks   values to point at, such as the middle; each with its name above the bars
 * @param limits  allowed stretch, shaded, with its name at the top; null for none
 * @param missing what is said of values that are not finite, after their share
 */
public record Histogram(String caption, AxisLabel across, double[] values, List<Mark> marks, Span limits, String missing) {
    private static final int MOST_BINS = 40;
    private static final double ROW = 14;
    /** What the axes take of the height, and how much of the rest names may take. */
    private static final double AROUND = 90;
    private static final double MOST_NAMES = 0.5;

    /** A value to point at. @param name what it is; may be empty */
    public record Mark(double value, String name) {
    }

    public Histogram {
        values = values.clone();
        marks = List.copyOf(marks);
    }

    /** Values that are not finite cannot be told. */
    public Histogram(String caption, AxisLabel across, double[] values, List<Mark> marks, Span limits) {
        this(caption, across, values, marks, limits, "cannot be told");
    }

    /** Bins: their width by Freedman and Diaconis (1981), rounded up to 1, 2 or 5 times a power of ten, at most {@value #MOST_BINS} of them. */
    static Ticks bins(double[] sorted) {
        int n = sorted.length;
        double range = sorted[n - 1] - sorted[0];
        if (range == 0) {
            double step = Ticks.niceStep(sorted[0] == 0 ? 0.1 : Math.abs(sorted[0]) / 50);
            return new Ticks(step, 0, List.of(sorted[0] - step / 2, sorted[0] + step / 2));
        }
        double quartiles = sorted[(int) (0.75 * (n - 1))] - sorted[(int) (0.25 * (n - 1))];
        double width = Math.max(range / MOST_BINS, quartiles > 0 ? 2 * quartiles / Math.cbrt(n) : range / 10);
        double step = Ticks.niceStep(Math.min(width, range / 3));
        double from = Math.floor(sorted[0] / step + 1e-9) * step;
        double to = Math.ceil(sorted[n - 1] / step - 1e-9) * step;
        return Ticks.stepped(from, Math.max(to, from + step), step);
    }

    /** Draws it. */
    public ChartDrawing draw(double width, double height, TextMeasure measure) {
        double w = Math.max(160, width);
        double h = Math.max(120, height);
        double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        int left = values.length - sorted.length;
        if (sorted.length == 0) {
            return new Chart(caption, across, new AxisLabel("share", "%"), List.of(), List.of(), true).draw(w, h, measure);
        }
        List<Double> borders = bins(sorted).values();
        double[] share = new double[borders.size() - 1];
        for (double v : sorted) {
            int bin = 0;
            while (bin < share.length - 1 && v >= borders.get(bin + 1)) {
                bin++;
            }
            share[bin] += 100.0 / values.length;
        }
        double high = Arrays.stream(share).max().orElse(1);
        double from = borders.get(0);
        double to = borders.get(borders.size() - 1);
        // Laid out once to know how many rows of names the axis up has to leave room for; its numbers may then be wider, and all across moves a little.
        List<PlacedLabel> first = names(new Frame(w, h, from, to, 0, high, 0, measure, false), from, to, measure);
        boolean band = limits != null && !limits.name().isEmpty();
        double rows = first.stream().mapToInt(l -> l.row() + 1).max().orElse(0) + (band ? 1 : 0);
        double part = Math.max(1 - MOST_NAMES, Math.min(1 / 1.08, 1 - (rows * ROW + 6) / Math.max(1, h - AROUND)));
        Frame frame = new Frame(w, h, from, to, 0, high / part, 0, measure, false);
        List<PlacedLabel> names = names(frame, from, to, measure);
        Pen pen = new Pen();
        if (limits != null) {
            double a = Math.max(frame.plot().x(), Math.min(frame.plot().right(), frame.x().at(limits.from())));
            double b = Math.max(a, Math.min(frame.plot().right(), frame.x().at(limits.to())));
            pen.shape(Path.box(new Box(a, frame.plot().y(), b - a, frame.plot().height())), Style.tint(limits.role(), 0.13));
            double half = measure.width(limits.name(), Size.SMALL, false) / 2 + 2;
            if (b > a) {
                pen.text(limits.name(), Math.max(frame.plot().x() + half, Math.min(frame.plot().right() - half, (a + b) / 2)), frame.plot().y() + ROW - 3, Anchor.MIDDLE, Size.SMALL,
                        limits.role());
            }
        }
        frame.draw(pen, caption, across, new AxisLabel("share", "%"));
        pen.group(Part.SERIES, caption, p -> {
            PathBuilder bars = Path.start();
            for (int i = 0; i < share.length; i++) {
                double x = frame.x().at(borders.get(i));
                double top = frame.y().at(share[i]);
                bars.move(x, frame.plot().bottom()).line(x, top).line(frame.x().at(borders.get(i + 1)), top)
                        .line(frame.x().at(borders.get(i + 1)), frame.plot().bottom()).close();
            }
            p.shape(bars.path(), Style.tint(Role.THREAD, 0.55).edged(Role.PAPER, 1));
            // The rows are those below an axis upside down: the first is the lowest, and the lines come up to it.
            double last = frame.plot().y() + (band ? ROW : 0) + names.stream().mapToInt(PlacedLabel::row).max().orElse(0) * ROW;
            for (Mark mark : marks) {
                if (mark.value() >= from && mark.value() <= to) {
                    double x = frame.x().at(mark.value());
                    double upTo = names.stream().filter(l -> l.label().x() == x).mapToDouble(l -> last - l.row() * ROW).findFirst().orElse(frame.plot().y());
                    p.shape(Path.line(x, upTo, x, frame.plot().bottom()), Style.line(Role.INK, 1).broken(Dash.DASHED));
                }
            }
            names.forEach(l -> p.text(l.text(), l.left() ? l.to() : l.from(), last - l.row() * ROW + ROW - 3, l.left() ? Anchor.END : Anchor.START, Size.SMALL, Role.INK));
        });
        if (left > 0) {
            pen.text(Numbers.fixed(100.0 * left / values.length, 1) + " % " + missing, frame.plot().right(), 16, Anchor.END, Size.SMALL, Role.DOES_NOT);
        }
        return new ChartDrawing(pen.drawing(w, h, caption, "Share of values over " + across.text()), frame.plot(), frame.x(), frame.y());
    }

    /** Names beside the lines of their marks, in rows so that none lies on another. */
    private List<PlacedLabel> names(Frame frame, double from, double to, TextMeasure measure) {
        List<Label> labels = marks.stream().filter(m -> !m.name().isEmpty() && m.value() >= from && m.value() <= to)
                .map(m -> new Label(m.name(), frame.x().at(m.value()), m.name(), m.name(), false, Role.INK)).toList();
        return new LabelRows(measure, Size.SMALL, frame.plot().x(), frame.plot().right()).place(labels);
    }
}
