package culm.geometry.section;

/**
 * A closed convex cross-section, symmetrical about x and y, as its support function: {@link #support(double)} is the distance
 * from the axis to the tangent whose outward normal makes the angle psi with x. Lengths in mm, angles in radians, any psi.
 * <p>Source: Cauchy's and Blaschke's formulas, e.g. L. A. Santalo, Integral Geometry and Geometric Probability, 1.2.
 */
public interface Section {
    /** Distance h from the axis to the tangent with normal angle psi, mm, positive. */
    double support(double psi);

    /** h'(psi), mm. */
    double supportSlope(double psi);

    /** Radius of curvature h + h'', mm, not negative. */
    double curvatureRadius(double psi);

    /** Perimeter, the integral of h over the full turn, mm. */
    double perimeter();

    /** Area, half the integral of h^2 - h'^2 over the full turn, mm^2. */
    double area();

    /** Smallest radius of curvature, mm: how far the section may be moved inward. */
    double smallestRadius();

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
