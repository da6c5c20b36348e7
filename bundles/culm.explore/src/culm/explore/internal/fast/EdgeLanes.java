package culm.explore.internal.fast;

import culm.blank.Cut;
import culm.blank.Widened;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;

/**
 * Where blades end and the half-width they have there, a block at a time, for gouges whose inner face is a circle. The corner at half-chord x
 * lies on that circle: (x, e + sqrt(r^2 - x^2)), so its angle needs no search. The mid-surface is
 * (R phi + e sin phi + r E(phi, k^2)) / 2, k = e/r, with E by its series in k^2 (NIST DLMF 19.2.5 expanded under the root), five terms: error below
 * 1e-10 mm for k^2 up to {@value #MOST_OFFSET}, 1e-14 for the trade's gouges. The arc tangent is taken of a quarter of the angle, 13 terms: error
 * below 1e-15 rad.
 */
final class EdgeLanes {
    /** Largest k^2. */
    static final double MOST_OFFSET = 0.15;
    /** Half-width on the mid-surface, mm, without growth; its slope over the full chord of the corner; that chord's slope along the blade. */
    final double[] half = new double[Columns.SIZE];
    final double[] along = new double[Columns.SIZE];
    final double[] slope = new double[Columns.SIZE];
    /** Angle and thickness at the corner that meets first. */
    final double[] sine = new double[Columns.SIZE];
    final double[] angle = new double[Columns.SIZE];
    final double[] thickness = new double[Columns.SIZE];
    /** Height of that corner above the tube's axis, mm: positive, or the blade does not fit; NaN where there is none. */
    final double[] above = new double[Columns.SIZE];
    private final GougeLanes gouge;
    private final Cut cut;
    private final WidthLanes inside;
    private final double[] across = new double[Columns.SIZE];
    private final double[] x = new double[Columns.SIZE];
    private final double[] cosine = new double[Columns.SIZE];
    private final double[] dy = new double[Columns.SIZE];

    EdgeLanes(GougeLanes gouge, Columns columns) {
        this.gouge = gouge;
        this.cut = columns.base().cut();
        this.inside = cut.edges() == EdgeKind.TWO_WIDTHS
                ? Kinds.rows(columns, "inside.", columns.base().insideWidths().orElseThrow(), columns.of(Widened.PATH), Widened.by(columns.base())) : null;
    }

    /** Inside widths, where the edges were measured by two widths; else null. */
    WidthLanes inside() {
        return inside;
    }

    void prepare(int n) {
        if (inside != null) {
            inside.prepare(n);
        }
    }

    /** Takes widths of the bark side, mm, and their slopes, at distances s from the fold. */
    void at(WidthLanes bark, double[] s, int n) {
        double[] chord = bark.width;
        System.arraycopy(bark.slope, 0, along, 0, n);
        if (cut.measure() == WidthMeasure.ARC) {
            arc(bark.width, gouge.bark, across, along, n);
            chord = across;
        }
        if (cut.edges() == EdgeKind.RADIAL) {
            radial(chord, gouge.bark, x, above, dy, n);
        } else if (cut.edges() == EdgeKind.SQUARE) {
            square(chord, gouge.circle, gouge.offset, x, above, dy, n);
        } else {
            inside.at(s, n);
            square(inside.width, gouge.circle, gouge.offset, x, above, dy, n);
            larger(chord, gouge.bark, x, above, dy, inside.slope, along, n);
        }
        corner(x, above, dy, sine, cosine, angle, slope, n);
        mid(gouge.bark, gouge.circle, gouge.offset, gouge.square, sine, cosine, angle, half, thickness, slope, n);
    }

    /** The corner at half-chord x on the inner circle; dy is the slope of its height over x. */
    private static void square(double[] width, double[] circle, double[] offset, double[] x, double[] y, double[] dy, int n) {
        for (int l = 0; l < n; l++) {
            double half = 0.5 * width[l];
            double root = Math.sqrt(circle[l] * circle[l] - half * half);
            x[l] = half;
            y[l] = offset[l] + root;
            dy[l] = -half / root;
        }
    }

    private static void radial(double[] width, double[] bark, double[] x, double[] y, double[] dy, int n) {
        for (int l = 0; l < n; l++) {
            double half = 0.5 * width[l];
            double root = Math.sqrt(bark[l] * bark[l] - half * half);
            x[l] = half;
            y[l] = root;
            dy[l] = -half / root;
        }
    }

    private static void arc(double[] width, double[] bark, double[] chord, double[] along, int n) {
        for (int l = 0; l < n; l++) {
            double angle = width[l] / (2 * bark[l]);
            chord[l] = angle < Math.PI / 2 ? 2 * bark[l] * Math.sin(angle) : Double.NaN;
            along[l] *= Math.cos(angle);
        }
    }

    /** Where the bark's corner (of the full width given) turns further than the inner one, it counts. */
    private static void larger(double[] width, double[] bark, double[] x, double[] y, double[] dy, double[] innerAlong,
            double[] along, int n) {
        for (int l = 0; l < n; l++) {
            double half = 0.5 * width[l];
            double root = Math.sqrt(bark[l] * bark[l] - half * half);
            if (x[l] * root < half * y[l]) {
                x[l] = half;
                y[l] = root;
                dy[l] = -half / root;
            } else {
                y[l] = Double.isNaN(root) ? Double.NaN : y[l];
                along[l] = innerAlong[l];
            }
        }
    }

    /** phi = atan(x / y) = 4 atan(tan(phi / 4)); slope becomes d phi / d width. */
    private static void corner(double[] x, double[] y, double[] dy, double[] sine, double[] cosine, double[] angle, double[] slope, int n) {
        for (int l = 0; l < n; l++) {
            double near = 1 / Math.sqrt(x[l] * x[l] + y[l] * y[l]);
            double s = x[l] * near;
            double c = y[l] * near;
            double half = s / (1 + c);
            double v = half / (1 + Math.sqrt(1 + half * half));
            double w = v * v;
            double high = Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, 1 / 25.0, -1 / 23.0), 1 / 21.0), -1 / 19.0), 1 / 17.0), -1 / 15.0);
            double low = Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, Math.fma(w, high, 1 / 13.0), -1 / 11.0), 1 / 9.0), -1 / 7.0), 1 / 5.0), -1 / 3.0);
            angle[l] = 4 * v * Math.fma(w, low, 1);
            sine[l] = s;
            cosine[l] = c;
            slope[l] = 0.5 * near * (c - s * dy[l]);
        }
    }

    private static void mid(double[] bark, double[] circle, double[] offset, double[] square, double[] sine, double[] cosine, double[] angle,
            double[] half, double[] thickness, double[] slope, int n) {
        for (int l = 0; l < n; l++) {
            double e = offset[l];
            double r = circle[l];
            double m = square[l];
            double s = sine[l];
            double s2 = s * s;
            double sc = s * cosine[l];
            double i2 = 0.5 * (angle[l] - sc);
            double i4 = (3 * i2 - s2 * sc) * (1 / 4.0);
            double i6 = (5 * i4 - s2 * s2 * sc) * (1 / 6.0);
            double i8 = (7 * i6 - s2 * s2 * s2 * sc) * (1 / 8.0);
            double i10 = (9 * i8 - s2 * s2 * s2 * s2 * sc) * (1 / 10.0);
            double less = m * Math.fma(m, Math.fma(m, Math.fma(m, Math.fma(m, 7 / 256.0 * i10, 5 / 128.0 * i8), 1 / 16.0 * i6), 1 / 8.0 * i4), 0.5 * i2);
            half[l] = 0.5 * (bark[l] * angle[l] + e * s + r * (angle[l] - less));
            double t = bark[l] - e * cosine[l] - r * Math.sqrt(1 - m * s2);
            thickness[l] = t;
            slope[l] *= bark[l] - 0.5 * t;
        }
    }
}
