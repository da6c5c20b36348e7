package culm.bench.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A costly smooth function kept as polynomials between marks: {@value #NODES} Chebyshev points a piece (barycentric formula, Berrut and
 * Trefethen 2004), pieces halved until two places in between agree with the function to the tolerance asked for.
 */
final class SmoothTable {
    private static final int NODES = 9;
    private static final int DEEPEST = 8;
    private final List<Piece> pieces = new ArrayList<>();

    /**
     * @param marks     ends and places where the function is not smooth, ascending, at least two
     * @param tolerance agreement asked for, in the function's unit
     */
    SmoothTable(DoubleUnaryOperator function, double[] marks, double tolerance) {
        for (int i = 0; i + 1 < marks.length; i++) {
            add(function, marks[i], marks[i + 1], tolerance, DEEPEST);
        }
    }

    private void add(DoubleUnaryOperator function, double from, double to, double tolerance, int depth) {
        Piece piece = new Piece(from, to, new double[NODES], new double[NODES]);
        for (int i = 0; i < NODES; i++) {
            piece.x[i] = 0.5 * (from + to) - 0.5 * (to - from) * Math.cos(Math.PI * i / (NODES - 1));
            piece.y[i] = function.applyAsDouble(piece.x[i]);
        }
        if (depth > 0 && !(piece.off(function, 0.43) <= tolerance && piece.off(function, 0.93) <= tolerance)) {
            add(function, from, 0.5 * (from + to), tolerance, depth - 1);
            add(function, 0.5 * (from + to), to, tolerance, depth - 1);
        } else {
            pieces.add(piece);
        }
    }

    /** The function between the first and the last mark; beyond them the end piece goes on. */
    double value(double x) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (x > pieces.get(mid).to) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return pieces.get(low).value(x);
    }

    private record Piece(double from, double to, double[] x, double[] y) {
        double off(DoubleUnaryOperator function, double share) {
            double at = from + share * (to - from);
            return Math.abs(value(at) - function.applyAsDouble(at));
        }

        double value(double at) {
            double above = 0;
            double below = 0;
            for (int i = 0; i < x.length; i++) {
                double gap = at - x[i];
                if (gap == 0) {
                    return y[i];
                }
                double weight = (i % 2 == 0 ? 1 : -1) * (i == 0 || i == x.length - 1 ? 0.5 : 1) / gap;
                above += weight * y[i];
                below += weight;
            }
            return above / below;
        }
    }
}
