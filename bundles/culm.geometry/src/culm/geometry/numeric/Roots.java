package culm.geometry.numeric;

import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Bracketing root finding with a stated tolerance, on Hipparchus' bracketing solver of order five. */
public final class Roots {
    /** Absolute tolerance of every root, in the unit of the argument. */
    public static final double TOLERANCE = 1e-12;
    private static final int EVALUATIONS = 500;

    private Roots() {
    }

    /**
     * The root of a continuous f between a and b, a &lt; b, where f changes sign.
     * @return a place within {@link #TOLERANCE} (or two ulps of it) of a change of sign
     * @throws org.hipparchus.exception.MathIllegalArgumentException when f(a) and f(b) have the same sign
     */
    public static double between(DoubleUnaryOperator f, double a, double b) {
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        return new BracketingNthOrderBrentSolver(1e-14, TOLERANCE, 1e-15, 5).solve(EVALUATIONS, f::applyAsDouble, a, b);
    }
}
