package culm.geometry.section;

import culm.geometry.numeric.Gauss;
import culm.geometry.numeric.Minimum;

/**
 * A closed convex cross-section, symmetrical about x and y, as its support function: {@link #support(double)} is the distance
 * from the axis to the tangent whose outward normal makes the angle psi with x. Lengths in mm, angles in radians, any psi.
 * <p>Whoever adds a kind of section writes three methods; perimeter, area and smallest radius follow by quadrature and search, and are
 * overridden where a closed form is known.
 * <p>Source: Cauchy's and Blaschke's formulas, e.g. L. A. Santalo, Integral Geometry and Geometric Probability, 1.2.
 */
public interface Section {
    /** Distance h from the axis to the tangent with normal angle psi, mm, positive. */
    double support(double psi);

    /** h'(psi), mm. */
    double supportSlope(double psi);

    /** Radius of curvature h + h'', mm, not negative. */
    double curvatureRadius(double psi);

    /** Perimeter, the integral of h over the full turn, mm. Here by Gauss quadrature of a quarter, to 1e-12 of the value for smooth sections. */
    default double perimeter() {
        return 4 * Gauss.integrate(this::support, 0, Math.PI / 2);
    }

    /**
     * Area, half the integral of h^2 - h'^2 over the full turn, mm^2; by parts half the integral of h rho, which is what is computed here: Gauss
     * quadrature of a quarter, to 1e-12 of the value for smooth sections.
     */
    default double area() {
        return 2 * Gauss.integrate(psi -> support(psi) * curvatureRadius(psi), 0, Math.PI / 2);
    }

    /** Smallest radius of curvature, mm: how far the section may be moved inward. Here by search over a quarter, to 1e-9. */
    default double smallestRadius() {
        return Minimum.between(this::curvatureRadius, 0, Math.PI / 2, 64).value();
    }

    /** Half of the wide axis, mm. */
    default double halfWide() {
        return support(0);
    }

    /** Half of the narrow axis, mm. */
    default double halfNarrow() {
        return support(Math.PI / 2);
    }

    /** The boundary point h n + h' t whose outward normal makes the angle psi with x. */
    default Point boundary(double psi) {
        double h = support(psi);
        double slope = supportSlope(psi);
        double cos = Math.cos(psi);
        double sin = Math.sin(psi);
        return new Point(h * cos - slope * sin, h * sin + slope * cos);
    }
}
