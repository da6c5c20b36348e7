package culm.figures;

import java.util.List;

/** Lines and cubic curves, immutable; always finite numbers. Filled by the even-odd rule. */
public final class Path {
    private final byte[] ops;
    private final double[] xy;

    Path(byte[] ops, double[] xy) {
        this.ops = ops;
        this.xy = xy;
    }

    /** Starts an empty path. */
    public static PathBuilder start() {
        return new PathBuilder();
    }

    /** One straight line. */
    public static Path line(double x1, double y1, double x2, double y2) {
        return start().move(x1, y1).line(x2, y2).path();
    }

    /** A rectangle. */
    public static Path box(Box b) {
        return start().move(b.x(), b.y()).line(b.right(), b.y()).line(b.right(), b.bottom()).line(b.x(), b.bottom()).close().path();
    }

    /** A rectangle with corners of radius r. */
    public static Path box(Box b, double r) {
        return start().box(b, r).path();
    }

    /** A circle. */
    public static Path circle(double x, double y, double r) {
        return start().circle(x, y, r).path();
    }

    /** Straight lines through points (x, y). */
    public static Path through(List<double[]> points) {
        return start().through(points).path();
    }

    /** A closed polygon of points (x, y). */
    public static Path polygon(List<double[]> points) {
        return start().polygon(points).path();
    }

    /** Hands every piece to a sink, in order. */
    public void walk(PathSink sink) {
        int i = 0;
        for (byte op : ops) {
            switch (op) {
                case PathBuilder.MOVE -> sink.move(xy[i], xy[i + 1]);
                case PathBuilder.LINE -> sink.line(xy[i], xy[i + 1]);
                case PathBuilder.CURVE -> sink.curve(xy[i], xy[i + 1], xy[i + 2], xy[i + 3], xy[i + 4], xy[i + 5]);
                default -> sink.close();
            }
            i += PathBuilder.numbers(op);
        }
    }

    /** Box around all points and control points. @throws IllegalStateException when empty */
    public Box bounds() {
        if (xy.length == 0) {
            throw new IllegalStateException("an empty path has no bounds");
        }
        double left = xy[0];
        double right = xy[0];
        double top = xy[1];
        double bottom = xy[1];
        for (int i = 2; i < xy.length; i += 2) {
            left = Math.min(left, xy[i]);
            right = Math.max(right, xy[i]);
            top = Math.min(top, xy[i + 1]);
            bottom = Math.max(bottom, xy[i + 1]);
        }
        return new Box(left, top, right - left, bottom - top);
    }

    /** The path moved right by dx and down by dy. */
    public Path moved(double dx, double dy) {
        double[] there = xy.clone();
        for (int i = 0; i < there.length; i += 2) {
            there[i] += dx;
            there[i + 1] += dy;
        }
        return new Path(ops, there);
    }

    /** Whether nothing is in it. */
    public boolean isEmpty() {
        return ops.length == 0;
    }
}
