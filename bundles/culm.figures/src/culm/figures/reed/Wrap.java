package culm.figures.reed;

import java.util.function.DoubleUnaryOperator;

import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;

/** The thread's turns: slanting lines with the curve of their turn from the wide side, round in the cut. */
final class Wrap {
    private static final double SOLID_BELOW = 2.2;
    private static final int MOST_TURNS = 2000;
    private final Reed reed;
    private final Lane lane;

    Wrap(Reed reed, Lane lane) {
        this.reed = reed;
        this.lane = lane;
    }

    /** Whether there is a wrap to draw. */
    private boolean none() {
        return !(reed.wrapTop() > reed.wrapBottom()) || (reed.wrapTop() - reed.wrapBottom()) / reed.pitch() > MOST_TURNS;
    }

    /** Seen from outside. @param under what the thread lies on, half of what is seen, over height */
    void turns(Pen pen, DoubleUnaryOperator under) {
        if (none()) {
            return;
        }
        double width = reed.thread() * lane.perMm();
        if (width < SOLID_BELOW) {
            solid(pen, under);
            return;
        }
        Path lower = halfTurns(reed.wrapBottom(), reed.wrapTop(), under, 0.5);
        Path upper = halfTurns(reed.wrapStart(), reed.wrapTop(), under, 1.5);
        for (Path layer : new Path[] {lower, upper}) {
            pen.shape(layer, Style.line(Role.THREAD_EDGE, width));
            pen.shape(layer, Style.line(Role.THREAD, Math.max(width * 0.6, width - 1.4)));
        }
    }

    /** One half turn goes over the front, half a pitch along while it crosses, and bends out of sight at both sides. */
    private Path halfTurns(double from, double to, DoubleUnaryOperator under, double layers) {
        PathBuilder path = Path.start();
        double pitch = reed.pitch();
        double room = Math.min(pitch, reed.thread()) / 2;
        for (int i = 0; to - (i + 0.5) * pitch >= from - 1e-9; i++) {
            double z = to - (i + 0.5) * pitch;
            double off = under.applyAsDouble(z) + layers * reed.thread();
            double a = lane.x(Math.min(to - room, z + pitch / 4));
            double b = lane.x(z - pitch / 4);
            path.move(a, lane.y(off)).curve(a, lane.y(off / 2), b, lane.y(-off / 2), b, lane.y(-off));
        }
        return path.path();
    }

    private void solid(Pen pen, DoubleUnaryOperator under) {
        band(pen, reed.wrapBottom(), reed.wrapTop(), under, 1);
        band(pen, reed.wrapStart(), reed.wrapTop(), under, 2);
    }

    private void band(Pen pen, double from, double to, DoubleUnaryOperator under, int layers) {
        pen.shape(lane.both(reed.outlines().points(from, to, z -> under.applyAsDouble(z) + layers * reed.thread())),
                Style.fill(Role.THREAD).edged(Role.THREAD_EDGE, Style.THIN));
    }

    /** In the cut through the middle. @param under what the thread lies on, over height */
    void cut(Pen pen, DoubleUnaryOperator under) {
        if (none()) {
            return;
        }
        // Two areas, the smaller one on the larger: a line around each takes twice the time.
        double edge = reed.thread() * lane.scale().perMm() < 5 ? 0.4 : Style.THIN;
        pen.shape(circles(under, 0), Style.fill(Role.THREAD_EDGE));
        pen.shape(circles(under, edge), Style.fill(Role.THREAD));
    }

    private Path circles(DoubleUnaryOperator under, double smaller) {
        PathBuilder path = Path.start();
        circles(path, reed.wrapBottom(), under, 0.5, smaller);
        circles(path, reed.wrapStart(), under, 1.5, smaller);
        return path.path();
    }

    private void circles(PathBuilder path, double from, DoubleUnaryOperator under, double layers, double smaller) {
        double pitch = reed.pitch();
        double r = Math.max(0, reed.thread() / 2 * lane.scale().perMm() - smaller);
        for (int i = 0; reed.wrapTop() - (i + 0.5) * pitch >= from - 1e-9; i++) {
            double z = reed.wrapTop() - (i + 0.5) * pitch;
            double off = under.applyAsDouble(z) + layers * reed.thread();
            path.circle(lane.x(z), lane.y(off), r);
            path.circle(lane.x(z), lane.y(-off), r);
        }
    }
}
