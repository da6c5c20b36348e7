package culm.workbench.internal.graphs;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Lengths;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.Ticks;

/**
 * A graph over the height, on the axis that all drawings along the reed share.
 *
 * @param caption what it shows, with its unit
 * @param points (height, value), ascending
 * @param role its colour
 * @param mirrored drawn to both sides of the axis, true to scale, as an outline
 * @param unit in what its numbers are written
 */
record Lane(String caption, List<double[]> points, Role role, boolean mirrored, Lengths unit) {
    private static final double CAPTION = 22;
    private static final double NUMBERS = 34;
    private static final double WRITTEN = 12;
    private static final int WIDTHS = 4;

    /** Height it needs. @param room what there is for each lane */
    double height(Scale scale, double room) {
        return mirrored ? CAPTION + WRITTEN + 2 * largest() * scale.perMm() + 16 : room;
    }

    private double largest() {
        return points.stream().mapToDouble(p -> p[1]).max().orElse(0);
    }

    /** The value at a height, between the points. */
    OptionalDouble at(double z) {
        for (int i = 1; i < points.size(); i++) {
            double[] a = points.get(i - 1);
            double[] b = points.get(i);
            if (z >= a[0] && z <= b[0]) {
                return OptionalDouble.of(b[0] == a[0] ? b[1] : a[1] + (b[1] - a[1]) * (z - a[0]) / (b[0] - a[0]));
            }
        }
        return OptionalDouble.empty();
    }

    /** Draws it below y. */
    void draw(Pen pen, Scale scale, double y, double height) {
        pen.text(caption, scale.left(), y + 14, Anchor.START, Size.BODY, Role.QUIET);
        Box box = new Box(scale.left(), y + CAPTION, scale.right() - scale.left(), height - CAPTION - 6);
        if (points.size() < 2) {
            return;
        }
        if (mirrored) {
            outline(pen, scale, box);
        } else {
            graph(pen, scale, box);
        }
    }

    private void outline(Pen pen, Scale scale, Box box) {
        double middle = box.y() + WRITTEN / 2 + box.height() / 2;
        List<double[]> round = new ArrayList<>();
        points.forEach(p -> round.add(new double[] { scale.x(p[0]), middle - p[1] * scale.perMm() }));
        for (int i = points.size() - 1; i >= 0; i--) {
            round.add(new double[] { scale.x(points.get(i)[0]), middle + points.get(i)[1] * scale.perMm() });
        }
        pen.group(Part.CANE, caption, p -> p.shape(Path.polygon(round), Style.fill(Role.CANE).edged(Role.CANE_EDGE, 1)));
        int last = points.size() - 1;
        for (int i = 0; i <= WIDTHS; i++) {
            double[] p = points.get(last * i / WIDTHS);
            Anchor anchor = i == 0 ? Anchor.START : i == WIDTHS ? Anchor.END : Anchor.MIDDLE;
            pen.text(unit.fixed(2 * p[1], 2), scale.x(p[0]), middle - p[1] * scale.perMm() - 5, anchor, Size.SMALL, Role.QUIET);
        }
        pen.shape(Path.line(round.get(0)[0], middle, scale.x(points.get(points.size() - 1)[0]), middle), Style.line(Role.CANE_EDGE, Style.THIN).broken(culm.figures.Dash.DASHED));
    }

    private void graph(Pen pen, Scale scale, Box box) {
        double low = points.stream().mapToDouble(p -> p[1]).min().orElse(0);
        double high = largest();
        double room = Math.max(1e-3, high - low) * 0.12;
        double one = role == Role.BRASS_EDGE ? unit.areaMm2() : unit.mm();
        Axis axis = new Axis((low - room) / one, (high + room) / one, box.bottom(), box.y());
        double first = scale.x(points.get(0)[0]);
        boolean left = first - NUMBERS >= scale.left();
        double from = Math.max(scale.left(), first);
        Ticks ticks = Ticks.within(axis.from(), axis.to(), Math.max(2, box.height() / 26));
        for (double tick : ticks.values()) {
            pen.line(from, axis.at(tick), scale.right(), axis.at(tick), tick == 0 ? Role.QUIET : Role.GRID, Style.THIN);
            double base = axis.at(tick) + (left ? 4 : -3);
            pen.text(ticks.label(tick), left ? from - 5 : scale.right(), base, Anchor.END, Size.SMALL, Role.QUIET);
        }
        List<double[]> line = points.stream().map(p -> new double[] { scale.x(p[0]), axis.at(p[1] / one) }).toList();
        pen.group(Part.SERIES, caption, p -> p.shape(Path.through(line), Style.line(role, 1.8)));
    }
}
