package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * Lines and points over two axes. The range is that of the finite values, widened by a twentieth, or by a half where things are counted; y starts at zero on
 * request.
 *
 * @param caption  what is shown
 * @param across   the axis across
 * @param up       the axis up
 * @param series   the values
 * @param spans    shaded stretches of the axis across
 * @param fromZero whether zero is always shown upwards
 */
public record Chart(String caption, AxisLabel across, AxisLabel up, List<Series> series, List<Span> spans, boolean fromZero) {
    private static final double ROOM = 0.05;

    public Chart {
        series = List.copyOf(series);
        spans = List.copyOf(spans);
    }

    /** Draws it. @param width at least 160; @param height at least 120, drawing units */
    public ChartDrawing draw(double width, double height, TextMeasure measure) {
        return draw(width, height, measure, ROOM);
    }

    /** The same. @param room by what part of its length a range is widened at each end */
    ChartDrawing draw(double width, double height, TextMeasure measure, double room) {
        double w = Math.max(160, width);
        double h = Math.max(120, height);
        Legend legend = new Legend(series.size() > 1 ? series : List.of(), w, measure);
        double[] xs = across.counts() ? beyond(range(0, false, 0)) : range(0, false, room);
        double[] ys = range(1, fromZero, room);
        Frame frame = new Frame(w, h, xs[0], xs[1], ys[0], ys[1], legend.height(), measure, across.counts());
        Pen pen = new Pen();
        for (Span span : spans) {
            span(pen, frame, span, measure);
        }
        frame.draw(pen, caption, across, up);
        legend.draw(pen, 33);
        Box clip = new Box(frame.plot().x() - 5, frame.plot().y() - 5, frame.plot().width() + 10, frame.plot().height() + 10);
        for (Series s : series) {
            pen.group(Part.SERIES, s.name(), Optional.of(clip), p -> series(p, frame, s));
        }
        if (series.stream().allMatch(s -> s.points().stream().noneMatch(Chart::finite))) {
            pen.text("nothing to show yet", frame.plot().x() + frame.plot().width() / 2, frame.plot().y() + frame.plot().height() / 2, Anchor.MIDDLE,
                    Size.BODY, Role.QUIET);
        }
        return new ChartDrawing(pen.drawing(w, h, caption, up.text() + " over " + across.text()), frame.plot(), frame.x(), frame.y());
    }

    private static void span(Pen pen, Frame frame, Span span, TextMeasure measure) {
        double from = Math.max(frame.plot().x(), Math.min(frame.plot().right(), frame.x().at(span.from())));
        double to = Math.max(from, Math.min(frame.plot().right(), frame.x().at(span.to())));
        pen.shape(Path.box(new Box(from, frame.plot().y(), to - from, frame.plot().height())), Style.tint(span.role(), 0.12));
        if (measure.width(span.name(), Size.SMALL, false) + 8 < to - from) {
            pen.text(span.name(), (from + to) / 2, frame.plot().y() + 12, Anchor.MIDDLE, Size.SMALL, span.role());
        }
    }

    private static void series(Pen p, Frame frame, Series s) {
        if (s.line()) {
            PathBuilder line = Path.start();
            boolean down = false;
            for (double[] point : s.points()) {
                double x = frame.x().at(point[0]);
                double y = frame.y().at(point[1]);
                boolean ok = finite(point);
                if (ok && down) {
                    line.line(x, y);
                } else if (ok) {
                    line.move(x, y);
                }
                down = ok;
            }
            p.shape(line.path(), Style.line(s.role(), 1.8).broken(s.dash()));
        }
        // Each a shape of its own: in one path, where two lie over each other there would be a hole.
        s.points().stream().filter(Chart::finite).forEach(q -> p.shape(Marks.at(s.marker(), frame.x().at(q[0]), frame.y().at(q[1])), Marks.style(s)));
    }

    private double[] range(int axis, boolean zero, double part) {
        List<Double> values = new ArrayList<>();
        series.forEach(s -> s.points().stream().filter(Chart::finite).forEach(p -> values.add(p[axis])));
        if (zero) {
            values.add(0.0);
        }
        double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double room = (high - low) * part;
        return new double[] {zero && low == 0 ? 0 : low - room, zero && high == 0 ? 0 : high + room};
    }

    /** Half a thing more at each end, so that what is counted from one has no number before it. */
    private static double[] beyond(double[] range) {
        return new double[] {range[0] - 0.5, range[1] + 0.5};
    }

    private static boolean finite(double[] point) {
        return Double.isFinite(point[0]) && Double.isFinite(point[1]);
    }
}
