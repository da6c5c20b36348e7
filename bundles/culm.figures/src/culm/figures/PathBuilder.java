package culm.figures;

import java.util.Arrays;
import java.util.List;

/** Collects the pieces of a {@link Path}. Every method refuses a number that is not finite with an {@link IllegalArgumentException}. */
public final class PathBuilder {
    static final byte MOVE = 0;
    static final byte LINE = 1;
    static final byte CURVE = 2;
    static final byte CLOSE = 3;
    /** Distance of control points for a quarter circle of radius 1: 4/3 (sqrt 2 - 1). */
    private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;
    private byte[] ops = new byte[16];
    private double[] xy = new double[64];
    private int pieces;
    private int numbers;

    PathBuilder() {
    }

    static int numbers(byte op) {
        return op == CLOSE ? 0 : op == CURVE ? 6 : 2;
    }

    public PathBuilder move(double x, double y) {
        return add(MOVE, x, y);
    }

    public PathBuilder line(double x, double y) {
        return add(LINE, x, y);
    }

    /** A cubic curve with two control points. */
    public PathBuilder curve(double x1, double y1, double x2, double y2, double x, double y) {
        return add(CURVE, x1, y1, x2, y2, x, y);
    }

    public PathBuilder close() {
        return add(CLOSE);
    }

    /** Straight lines through points (x, y), starting anew. */
    public PathBuilder through(List<double[]> points) {
        for (int i = 0; i < points.size(); i++) {
            double[] p = points.get(i);
            add(i == 0 ? MOVE : LINE, p[0], p[1]);
        }
        return this;
    }

    /** A closed polygon of points (x, y). */
    public PathBuilder polygon(List<double[]> points) {
        return through(points).close();
    }

    /** A circle, within 0.03 % of its radius. */
    public PathBuilder circle(double x, double y, double r) {
        return box(new Box(x - r, y - r, 2 * r, 2 * r), r);
    }

    /** A rectangle with corners of radius r. */
    public PathBuilder box(Box b, double r) {
        double k = r * (1 - QUARTER);
        return move(b.x() + r, b.y()).line(b.right() - r, b.y())
                .curve(b.right() - k, b.y(), b.right(), b.y() + k, b.right(), b.y() + r).line(b.right(), b.bottom() - r)
                .curve(b.right(), b.bottom() - k, b.right() - k, b.bottom(), b.right() - r, b.bottom()).line(b.x() + r, b.bottom())
                .curve(b.x() + k, b.bottom(), b.x(), b.bottom() - k, b.x(), b.bottom() - r).line(b.x(), b.y() + r)
                .curve(b.x(), b.y() + k, b.x() + k, b.y(), b.x() + r, b.y()).close();
    }

    /** The path so far. */
    public Path path() {
        return new Path(Arrays.copyOf(ops, pieces), Arrays.copyOf(xy, numbers));
    }

    private PathBuilder add(byte op, double... values) {
        if (pieces == ops.length) {
            ops = Arrays.copyOf(ops, 2 * pieces);
        }
        if (numbers + values.length > xy.length) {
            xy = Arrays.copyOf(xy, 2 * xy.length);
        }
        ops[pieces++] = op;
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a drawing has no place for " + value);
            }
            xy[numbers++] = value;
        }
        return this;
    }
}
