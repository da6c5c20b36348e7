package culm.geometry.gouge;

import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * The gouged cane of a blade: the tube's radius R, the thickness at the fold and, where it was measured there too, at the end of the
 * cane; linear in s between them. All mm.
 */
public final class Gouge {
    private final double tubeRadius;
    private final GougeSection fold;
    private final GougeSection end;
    private final double foldedLength;

    /**
     * @param tubeRadius   radius of the bark surface, mm, positive
     * @param fold         thickness at the fold
     * @param end          thickness at the end of the cane; null when it is the same all along
     * @param foldedLength from the fold to the end of the cane, mm, positive
     */
    public Gouge(double tubeRadius, GougeSection fold, GougeSection end, double foldedLength) {
        if (!(tubeRadius > 0 && foldedLength > 0)) {
            throw new GeometryException("tube", "A tube needs a positive diameter, not " + Told.given(2 * tubeRadius) + " " + Told.UNIT + ".");
        }
        this.tubeRadius = tubeRadius;
        this.fold = fold;
        this.end = end;
        this.foldedLength = foldedLength;
    }

    /** Radius of the bark surface, mm. */
    public double tubeRadius() {
        return tubeRadius;
    }

    /** Whether the thickness changes along the cane. */
    public boolean changesAlong() {
        return end != null;
    }

    /** Thickness at the distance s from the fold, 0 &lt;= s &lt;= folded length, mm. */
    public GougeSection at(double s) {
        return end == null ? fold : new BlendedGouge(fold, end, Math.min(1, Math.max(0, s / foldedLength)));
    }

    /** Length of the mid-surface from the middle to phi: R phi - T/2, T the integral of the thickness; mm. */
    public double midSurface(GougeSection section, double phi) {
        return tubeRadius * phi - section.integral(phi) / 2;
    }
}
