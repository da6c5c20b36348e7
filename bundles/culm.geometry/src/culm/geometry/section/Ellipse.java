package culm.geometry.section;

import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;

import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * An ellipse with semi-axes a along x and b along y, mm, both positive; either may be the longer one.
 * <p>h = sqrt(a^2 cos^2 psi + b^2 sin^2 psi); radius of curvature a^2 b^2 / h^3. Perimeter 4 A E(m), m = 1 - B^2/A^2 with A the
 * longer one (NIST DLMF 19.9.9; the argument is the parameter m = k^2, not the modulus), exact to a few ulps; area pi a b.
 *
 * @param a semi-axis along x, mm, positive
 * @param b semi-axis along y, mm, positive
 */
public record Ellipse(double a, double b) implements Section {
    /** @throws GeometryException when an axis is not a positive number */
    public Ellipse {
        if (!(a > 0 && b > 0 && Double.isFinite(a) && Double.isFinite(b))) {
            throw new GeometryException("", "An oval needs two positive axes, not " + Told.given(2 * a) + " and " + Told.given(2 * b) + " " + Told.UNIT + ".");
        }
    }

    @Override
    public double support(double psi) {
        double sin = Math.sin(psi);
        return Math.sqrt(a * a * (1 - sin) * (1 + sin) + b * b * sin * sin);
    }

    @Override
    public double supportSlope(double psi) {
        return (b * b - a * a) * Math.sin(psi) * Math.cos(psi) / support(psi);
    }

    @Override
    public double curvatureRadius(double psi) {
        double h = support(psi);
        double ab = a * b;
        return ab / h * (ab / h) / h;
    }

    @Override
    public double perimeter() {
        double longer = Math.max(a, b);
        double ratio = Math.min(a, b) / longer;
        return 4 * longer * LegendreEllipticIntegral.bigE((1 - ratio) * (1 + ratio));
    }

    @Override
    public double area() {
        return Math.PI * a * b;
    }

    @Override
    public double smallestRadius() {
        double shorter = Math.min(a, b);
        return shorter * shorter / Math.max(a, b);
    }
}
