package culm.explore.internal.fast;

import culm.blank.Inputs;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.gouge.OffsetCircle;

/**
 * Gouges whose inner face is a circle, a block at a time: R the tube's radius, r the circle's, e how far its centre lies above the tube's.
 * A lane whose numbers give no such circle gets NaN.
 */
final class GougeLanes {
    final double[] bark = new double[Columns.SIZE];
    final double[] circle = new double[Columns.SIZE];
    final double[] offset = new double[Columns.SIZE];
    /** k^2 = (e / r)^2. */
    final double[] square = new double[Columns.SIZE];
    private final double[] tube;
    private final double[] middle;
    private final double[] side;
    private final double[] sideAt;
    private final double[] cutter;

    GougeLanes(Columns columns) {
        GougeType type = columns.base().gouge().type();
        tube = columns.of(Inputs.TUBE);
        middle = columns.of("gouge.middle");
        side = type instanceof MiddleAndSide ? columns.of("gouge.side") : null;
        sideAt = side != null ? columns.of("gouge.sideAt") : null;
        cutter = type instanceof OffsetCircle ? columns.of("gouge.radius") : null;
    }

    /** Whether a type's inner face is a circle that is known here. */
    static boolean knows(GougeType type) {
        return type instanceof Concentric || type instanceof OffsetCircle || type instanceof MiddleAndSide;
    }

    void prepare(int n) {
        if (side != null) {
            middleAndSide(tube, middle, side, sideAt, bark, offset, circle, n);
        } else if (cutter != null) {
            offset(tube, middle, cutter, bark, offset, circle, n);
        } else {
            concentric(tube, middle, bark, offset, circle, n);
        }
        square(offset, circle, square, n);
    }

    private static void square(double[] offset, double[] circle, double[] square, int n) {
        for (int l = 0; l < n; l++) {
            double k = offset[l] / circle[l];
            square[l] = k * k;
        }
    }

    /** Geometry section 4.3; NaN where no circle passes. */
    private static void middleAndSide(double[] tube, double[] middle, double[] side, double[] at, double[] bark, double[] offset, double[] circle, int n) {
        for (int l = 0; l < n; l++) {
            double big = 0.5 * tube[l];
            double c = big - middle[l];
            double q = big - side[l];
            double x = at[l] / big;
            double below = c - q * Math.sqrt(1 - x * x);
            double e = (c - q) * (c + q) / (2 * below);
            bark[l] = big;
            offset[l] = e;
            circle[l] = c - e;
        }
    }

    private static void offset(double[] tube, double[] middle, double[] cutter, double[] bark, double[] offset, double[] circle, int n) {
        for (int l = 0; l < n; l++) {
            double big = 0.5 * tube[l];
            bark[l] = big;
            circle[l] = cutter[l];
            offset[l] = big - cutter[l] - middle[l];
        }
    }

    private static void concentric(double[] tube, double[] middle, double[] bark, double[] offset, double[] circle, int n) {
        for (int l = 0; l < n; l++) {
            double big = 0.5 * tube[l];
            bark[l] = big;
            circle[l] = big - middle[l];
            offset[l] = 0;
        }
    }
}
