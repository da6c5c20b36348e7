package culm.geometry.numeric;

import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Bracketing root finding with a stated tolerance, on Hipparchus' bracketing solver of order five. */
public final class Roots {
    /** Absolute tolerance of every root, in the unit of the argument. */
    public static final double TOLERANCE = 1e-12;
    private static final int EVALUATIONS = 500;
    /** Smaller values count as none: the solver multiplies two of them to compare their signs, and their product would vanish. */
    private static final double NOTHING = 1e-150;

    private Roots() {
    }

    /**
     * The root of a continuous f between a and b, a &lt; b, where f changes sign.
     * @return a place within {@link #TOLERANCE} (or two ulps of it) of a change of sign
     * @throws org.hipparchus.exception.MathIllegalArgumentException when f(a) and f(b) have the same sign
     */
    public static double between(DoubleUnaryOperator f, double a, double b) {
        if (value(f, a) == 0) {
            return a;
        }
        if (value(f, b) == 0) {
            return b;
        }
        return new BracketingNthOrderBrentSolver(1e-14, TOLERANCE, 1e-15, 5).solve(EVALUATIONS, x -> value(f, x), a, b);
    }

    private static double value(DoubleUnaryOperator f, double x) {
        double y = f.applyAsDouble(x);
        return Math.abs(y) < NOTHING ? 0 : y;
    }
}
