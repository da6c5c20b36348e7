package culm.geometry.section;


import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * The parallel curve of a section at distance d, mm: outward when positive, inward when negative. Exact: h + d, P + 2 pi d,
 * A + P d + pi d^2 (Steiner's formulas). The offset of an ellipse is not an ellipse.
 *
 * @param base     the section it is parallel to
 * @param distance outward, mm; negative inward, then smaller in size than the base's smallest radius of curvature
 */
public record ParallelSection(Section base, double distance) implements Section {
    /** @throws GeometryException when an inward distance is not below the base's smallest radius of curvature */
    public ParallelSection {
        if (!Double.isFinite(distance)) {
            throw new GeometryException("", "A wall of " + Told.given(distance) + " " + Told.UNIT + " is not a length.");
        }
        if (distance < 0 && -distance >= base.smallestRadius()) {
            throw new GeometryException("wall", "A wall of " + Told.length(-distance, 2) + " does not fit inside an oval of "
                    + Told.number(2 * base.halfWide(), 2) + " by " + Told.length(2 * base.halfNarrow(), 2) + ": its sharpest bend has a radius of only "
                    + Told.length(base.smallestRadius(), 2) + ".");
        }
    }

    @Override
    public double support(double psi) {
        return base.support(psi) + distance;
    }

    @Override
    public double supportSlope(double psi) {
        return base.supportSlope(psi);
    }

    @Override
    public double curvatureRadius(double psi) {
        return base.curvatureRadius(psi) + distance;
    }

    @Override
    public double perimeter() {
        return base.perimeter() + 2 * Math.PI * distance;
    }

    @Override
    public double area() {
        return base.area() + base.perimeter() * distance + Math.PI * distance * distance;
    }

    @Override
    public double smallestRadius() {
        return base.smallestRadius() + distance;
    }
}
