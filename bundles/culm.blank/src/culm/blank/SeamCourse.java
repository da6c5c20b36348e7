package culm.blank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

import culm.geometry.numeric.Chebyshev;
import culm.geometry.numeric.Minimum;
import culm.geometry.numeric.Roots;

/**
 * How far the sides are open along the whole overlap, as polynomials that stand for {@link Seam#open(double)}: one for each piece between two rows,
 * halved until it is met to {@value #CLOSE_ENOUGH} mm. They are only used to look and to draw; every height that is told comes from the seam itself.
 */
public final class SeamCourse {
    /** Largest distance of the polynomials from the seam, mm. */
    public static final double CLOSE_ENOUGH = 1e-7;
    /** Largest distance of two points of the course that is told, mm. */
    public static final double STEP = 0.25;
    private static final double TOUCHES = 1e-6;
    private static final double SHORTEST = 1e-3;
    private static final int FIRST = 4;
    private static final int LAST = 16;

    private final DoubleUnaryOperator seam;
    private final List<Chebyshev> pieces;

    private SeamCourse(DoubleUnaryOperator seam, List<Chebyshev> pieces) {
        this.seam = seam;
        this.pieces = pieces;
    }

    /**
     * The course between two heights.
     * @param marks heights where the seam may not be smooth, in any order; those outside are left out
     * @throws culm.geometry.GeometryException when the seam cannot be computed somewhere
     */
    static SeamCourse of(DoubleUnaryOperator seam, double from, double to, double[] marks) {
        double[] ends = DoubleStream.concat(DoubleStream.of(from, to), Arrays.stream(marks).filter(z -> z > from && z < to)).sorted().distinct().toArray();
        List<Chebyshev> pieces = new ArrayList<>();
        double before = seam.applyAsDouble(from);
        for (int i = 1; i < ends.length; i++) {
            double after = seam.applyAsDouble(ends[i]);
            fit(pieces, seam, ends[i - 1], before, ends[i], after);
            before = after;
        }
        return new SeamCourse(seam, pieces);
    }

    private static void fit(List<Chebyshev> pieces, DoubleUnaryOperator seam, double a, double fa, double b, double fb) {
        double[] values = {fb, fa};
        Chebyshev found = null;
        for (int n = FIRST; n <= LAST; n *= 2) {
            double[] more = new double[n + 1];
            int known = n / (values.length - 1);
            for (int i = 0; i <= n; i++) {
                more[i] = i % known == 0 ? values[i / known] : seam.applyAsDouble(Chebyshev.node(a, b, i, n));
            }
            values = more;
            found = Chebyshev.through(a, b, values);
            if (found.tail() < CLOSE_ENOUGH / 4 || b - a < SHORTEST) {
                pieces.add(found);
                return;
            }
        }
        double mid = 0.5 * (a + b);
        double middle = values[LAST / 2];
        fit(pieces, seam, a, fa, mid, middle);
        fit(pieces, seam, mid, middle, b, fb);
    }

    /** How far the sides are open at z, on the overlap, mm, to {@link #CLOSE_ENOUGH}. */
    public double open(double z) {
        for (Chebyshev piece : pieces) {
            if (z <= piece.to()) {
                return piece.value(z);
            }
        }
        return pieces.get(pieces.size() - 1).value(z);
    }

    /** Lowest height of the overlap, mm. */
    public double from() {
        return pieces.get(0).from();
    }

    /** The staple's top, mm. */
    public double to() {
        return pieces.get(pieces.size() - 1).to();
    }

    /** The closing at a seam that is opened by {@code extra} mm more (crooked; negative closes it); heights to 1e-12 mm where the course is not flat. */
    Closing closing(double extra) {
        List<Double> changes = changes(extra);
        List<Stretch> closed = new ArrayList<>();
        double since = told(pieces.get(0), from(), extra) <= 0 ? from() : Double.NaN;
        for (double z : changes) {
            if (Double.isNaN(since)) {
                since = z;
            } else {
                closed.add(new Stretch(since, z));
                since = Double.NaN;
            }
        }
        OptionalDouble at = Double.isNaN(since) ? OptionalDouble.empty() : OptionalDouble.of(since);
        at.ifPresent(z -> closed.add(new Stretch(z, to())));
        return new Closing(at, Collections.unmodifiableList(closed), points(extra, changes), Optional.empty(), "");
    }

    /** Heights where the seam goes from open to closed or back, ascending. */
    private List<Double> changes(double extra) {
        List<Double> found = new ArrayList<>();
        boolean shut = told(pieces.get(0), from(), extra) <= 0;
        for (Chebyshev piece : pieces) {
            double[] stops = stops(piece);
            double before = stops[0];
            for (int i = 1; i < stops.length; i++) {
                double stop = stops[i];
                double value = told(piece, stop, extra);
                if (i + 1 < stops.length && Math.abs(value) < TOUCHES) {
                    double sign = shut ? -1 : 1;
                    Minimum touch = Minimum.between(z -> sign * (seam.applyAsDouble(z) + extra), before, stops[i + 1], 8);
                    stop = touch.at();
                    value = sign * touch.value();
                }
                if (shut != value <= 0) {
                    found.add(root(piece, extra, before, stop));
                    shut = !shut;
                }
                before = stop;
            }
        }
        return found;
    }

    /** The ends of a piece and its turning points. */
    private static double[] stops(Chebyshev piece) {
        return DoubleStream.concat(DoubleStream.of(piece.from(), piece.to()), piece.turns().stream().mapToDouble(Double::doubleValue)).sorted().toArray();
    }

    /** The polynomial's value, or the seam's where that could be on either side of zero. */
    private double told(Chebyshev piece, double z, double extra) {
        double value = piece.value(z) + extra;
        return Math.abs(value) < TOUCHES ? seam.applyAsDouble(z) + extra : value;
    }

    /** The change of sign between a and b: where the polynomial has it, then by the seam itself. */
    private double root(Chebyshev piece, double extra, double a, double b) {
        double left = piece.value(a) + extra;
        double right = piece.value(b) + extra;
        if (left * right < 0) {
            double near = Roots.between(z -> piece.value(z) + extra, a, b);
            double span = 4 * CLOSE_ENOUGH / Math.max(Math.abs(piece.slope(near)), 1e-6);
            double low = Math.max(a, near - span);
            double high = Math.min(b, near + span);
            if (seam.applyAsDouble(low) + extra <= 0 != seam.applyAsDouble(high) + extra <= 0) {
                return Roots.between(z -> seam.applyAsDouble(z) + extra, low, high);
            }
        }
        if (seam.applyAsDouble(a) + extra <= 0 != seam.applyAsDouble(b) + extra <= 0) {
            return Roots.between(z -> seam.applyAsDouble(z) + extra, a, b);
        }
        return jump(piece, extra, a, b);
    }

    /** Where a seam that jumps, as absurd numbers can make it, is told to change: its polynomial runs through the jump, on a piece of {@value #SHORTEST} mm at most. */
    private double jump(Chebyshev piece, double extra, double a, double b) {
        boolean shut = told(piece, b, extra) <= 0;
        double low = a;
        double high = b;
        while (high - low > Roots.TOLERANCE) {
            double mid = 0.5 * (low + high);
            if (mid <= low || mid >= high) {
                break;
            }
            if (told(piece, mid, extra) <= 0 == shut) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return high;
    }

    private List<SeamPoint> points(double extra, List<Double> changes) {
        List<SeamPoint> all = new ArrayList<>();
        for (Chebyshev piece : pieces) {
            int steps = (int) Math.ceil((piece.to() - piece.from()) / STEP);
            for (int k = 0; k < steps; k++) {
                double z = piece.from() + (piece.to() - piece.from()) * k / steps;
                all.add(new SeamPoint(z, piece.value(z) + extra));
            }
        }
        all.add(new SeamPoint(to(), open(to()) + extra));
        for (double z : changes) {
            all.add(new SeamPoint(z, 0));
        }
        all.sort(Comparator.comparingDouble(SeamPoint::z));
        return Collections.unmodifiableList(all);
    }
}
