package culm.geometry.shape;


import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeSection;
import culm.geometry.numeric.Roots;
import culm.geometry.words.Told;

/**
 * The angles at which a blade ends. The corner that meets first counts: {@link #meeting()}.
 *
 * @param outer half-angle of the blade on the bark, radians
 * @param inner half-angle on the inside, radians
 */
public record Edge(double outer, double inner) {
    /** The larger of both angles. */
    public double meeting() {
        return Math.max(outer, inner);
    }

    /** Bark half-angle of a width W on radius R: asin(W/2R) for a chord, W/(2R) for an arc. @throws GeometryException when the cane is wider than the tube */
    public static double barkAngle(double width, WidthMeasure measure, double tubeRadius) {
        double ratio = width / (2 * tubeRadius);
        if (measure == WidthMeasure.CHORD ? ratio > 1 : ratio > Math.PI / 2) {
            throw new GeometryException("", "A width of " + Told.length(width, 2) + " does not fit on a tube of " + Told.length(2 * tubeRadius, 2) + ".");
        }
        return measure == WidthMeasure.CHORD ? Math.asin(ratio) : ratio;
    }

    /** The edge of a blade cut square to the chord: (R - t(phi_in)) sin phi_in = R sin phi_out. */
    public static Edge square(double outer, GougeSection gouge, double tubeRadius) {
        return new Edge(outer, innerAngle(tubeRadius * Math.sin(outer), gouge, tubeRadius, outer));
    }

    /** The edge whose inside half-width was measured: (R - t(phi_in)) sin phi_in = W_in/2. */
    public static Edge twoWidths(double outer, double insideWidth, GougeSection gouge, double tubeRadius) {
        return new Edge(outer, innerAngle(insideWidth / 2, gouge, tubeRadius, 0));
    }

    private static double innerAngle(double half, GougeSection gouge, double radius, double from) {
        if ((radius - gouge.thickness(from)) * Math.sin(from) >= half) {
            // No cane is left at the outer corner; whoever asked for the edge refuses that with its own reason.
            return from;
        }
        double a = from;
        if ((radius - gouge.thickness(a)) * Math.sin(a) >= half) {
            return a;
        }
        int steps = 32;
        for (int i = 1; i <= steps; i++) {
            double b = from + (Math.PI / 2 - from) * i / steps;
            if ((radius - gouge.thickness(b)) * Math.sin(b) >= half) {
                return Roots.between(phi -> (radius - gouge.thickness(phi)) * Math.sin(phi) - half, a, b);
            }
            a = b;
        }
        throw new GeometryException("", "The inside of a tube of " + Told.length(2 * radius, 2) + " is too narrow for a blade "
                + Told.length(2 * half, 2) + " wide with square edges.");
    }
}
