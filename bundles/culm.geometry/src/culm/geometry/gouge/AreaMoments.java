package culm.geometry.gouge;

/**
 * Area and second moments of a section that is symmetrical about y; x runs along the chord, y from the tube's centre through the middle of the blade.
 *
 * @param area     mm^2
 * @param centroid distance of the centroid from the tube's centre, mm
 * @param aboutX   second moment about the axis along the chord through the centroid, the integral of (y - centroid)^2, mm^4: how stiff the blade is
 *                 when the opening is pressed
 * @param aboutY   second moment about the axis of symmetry, the integral of x^2, mm^4
 */
public record AreaMoments(double area, double centroid, double aboutX, double aboutY) {
    /** From moments about the tube's centre: integrals of 1, y, y^2 and x^2. */
    static AreaMoments aboutCentroid(double area, double first, double yy, double xx) {
        double centroid = first / area;
        return new AreaMoments(area, centroid, yy - area * centroid * centroid, xx);
    }
}
