package culm.geometry.section;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

import culm.geometry.numeric.Gauss;

/**
 * The section a developable sheet has between two others: support (1 - u) h0 + u h1, 0 &lt;= u &lt;= 1 (Minkowski's sum).
 * Perimeter exact; area by Gauss quadrature to 1e-12; smallest radius by search to 1e-9.
 */
public record BlendSection(Section first, Section second, double u) implements Section {
    private static final int SCAN = 64;

    /** @throws IllegalArgumentException when u is outside 0 to 1 */
    public BlendSection {
        if (!(u >= 0 && u <= 1)) {
            throw new IllegalArgumentException("a blend lies between its two sections: " + u);
        }
    }

    @Override
    public double support(double psi) {
        return (1 - u) * first.support(psi) + u * second.support(psi);
    }

    @Override
    public double supportSlope(double psi) {
        return (1 - u) * first.supportSlope(psi) + u * second.supportSlope(psi);
    }

    @Override
    public double curvatureRadius(double psi) {
        return (1 - u) * first.curvatureRadius(psi) + u * second.curvatureRadius(psi);
    }

    @Override
    public double perimeter() {
        return (1 - u) * first.perimeter() + u * second.perimeter();
    }

    @Override
    public double area() {
        return 2 * Gauss.integrate(psi -> support(psi) * curvatureRadius(psi), 0, Math.PI / 2);
    }

    @Override
    public double smallestRadius() {
        double best = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int i = 0; i <= SCAN; i++) {
            double r = curvatureRadius(i * Math.PI / 2 / SCAN);
            if (r < best) {
                best = r;
                at = i;
            }
        }
        double step = Math.PI / 2 / SCAN;
        UnivariateFunction radius = this::curvatureRadius;
        double found = new BrentOptimizer(1e-9, 1e-12).optimize(MaxEval.unlimited(), GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(radius),
                new SearchInterval(Math.max(0, (at - 1) * step), Math.min(Math.PI / 2, (at + 1) * step))).getValue();
        return Math.min(best, found);
    }
}
