package culm.geometry.section;

/**
 * The section a developable sheet has between two others: support (1 - u) h0 + u h1, 0 &lt;= u &lt;= 1 (Minkowski's sum).
 * Perimeter exact; area by Gauss quadrature to 1e-12; smallest radius exact between two ovals that are wide the same way, else by search to 1e-9.
 *
 * @param first  the section at u = 0
 * @param second the section at u = 1
 * @param u      share of the second, 0 to 1
 */
public record BlendSection(Section first, Section second, double u) implements Section {
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

    /** Both radii are smallest at the same end of the wide axis when both ovals are wide the same way; a circle's is the same everywhere. */
    @Override
    public double smallestRadius() {
        if (first instanceof Ellipse a && second instanceof Ellipse b && (a.a() - a.b()) * (b.a() - b.b()) >= 0) {
            return (1 - u) * a.smallestRadius() + u * b.smallestRadius();
        }
        return Section.super.smallestRadius();
    }
}
