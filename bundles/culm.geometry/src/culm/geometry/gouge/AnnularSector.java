package culm.geometry.gouge;

/**
 * A ring's sector, symmetrical about the y axis: outer radius R, inner radius r, half-angle alpha; the section of a concentric gouge cut along the
 * radius. Closed formulas, common to handbooks of strength of materials: A = (R^2 - r^2) alpha, distance of the centroid from the centre
 * 2 (R^3 - r^3) sin alpha / (3 A), second moments (R^4 - r^4)/4 (alpha -+ sin 2 alpha / 2) about the centre.
 *
 * @param outer     R, mm, positive
 * @param inner     r, mm, 0 &lt;= r &lt; R
 * @param halfAngle alpha, radians, 0 &lt; alpha &lt;= pi
 */
public record AnnularSector(double outer, double inner, double halfAngle) {
    /** @throws IllegalArgumentException when the numbers are out of their ranges */
    public AnnularSector {
        if (!(outer > inner && inner >= 0 && halfAngle > 0 && halfAngle <= Math.PI)) {
            throw new IllegalArgumentException("not a ring's sector: " + outer + ", " + inner + ", " + halfAngle);
        }
    }

    /** Area, centroid and second moments. */
    public AreaMoments moments() {
        double area = (outer - inner) * (outer + inner) * halfAngle;
        double first = 2 * (outer * outer * outer - inner * inner * inner) * Math.sin(halfAngle) / 3;
        double fourth = (Math.pow(outer, 4) - Math.pow(inner, 4)) / 4;
        double across = fourth * (halfAngle - Math.sin(2 * halfAngle) / 2);
        double through = fourth * (halfAngle + Math.sin(2 * halfAngle) / 2);
        return AreaMoments.aboutCentroid(area, first, through, across);
    }
}
