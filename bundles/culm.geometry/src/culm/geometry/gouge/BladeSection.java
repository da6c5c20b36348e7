package culm.geometry.gouge;

import java.util.function.DoubleUnaryOperator;

import culm.geometry.numeric.Gauss;

/**
 * The section of a blade as it lies in the tube: bounded by the bark, the gouged inside, and at each side a straight edge from the outer corner
 * (R, outer angle) to the inner one (R - t(inner angle), inner angle).
 *
 * @param gouge      thickness, positive within the inner angle
 * @param tubeRadius R, mm
 * @param outer      half-angle of the blade on the bark, radians, 0 &lt; outer &lt;= pi/2
 * @param inner      half-angle on the inside, radians, 0 &lt; inner &lt;= pi/2
 */
public record BladeSection(GougeSection gouge, double tubeRadius, double outer, double inner) {
    /**
     * Area and second moments: polar integrals over bark and inside (Gauss quadrature, broken where the gouge has a row) and the triangles under
     * both edges; to 1e-11 of the values for smooth gouges.
     */
    public AreaMoments moments() {
        double r2 = tubeRadius * tubeRadius;
        double sin2 = Math.sin(2 * outer) / 2;
        double area = r2 * outer - inside(phi -> 1, 2);
        double first = 2 * r2 * tubeRadius / 3 * Math.sin(outer) - 2 * inside(Math::cos, 3) / 3;
        double yy = r2 * r2 / 4 * (outer + sin2) - inside(phi -> Math.cos(phi) * Math.cos(phi), 4) / 2;
        double xx = r2 * r2 / 4 * (outer - sin2) - inside(phi -> Math.sin(phi) * Math.sin(phi), 4) / 2;
        double ax = tubeRadius * Math.sin(outer);
        double ay = tubeRadius * Math.cos(outer);
        double rho = tubeRadius - gouge.thickness(inner);
        double bx = rho * Math.sin(inner);
        double by = rho * Math.cos(inner);
        double twice = bx * ay - ax * by;
        return AreaMoments.aboutCentroid(area + twice, first + twice * (ay + by) / 3, yy + twice * (ay * ay + ay * by + by * by) / 6,
                xx + twice * (ax * ax + ax * bx + bx * bx) / 6);
    }

    private double inside(DoubleUnaryOperator weight, int power) {
        return Gauss.integrate(phi -> weight.applyAsDouble(phi) * Math.pow(tubeRadius - gouge.thickness(phi), power), 0, inner, gouge.breaks());
    }
}
