package culm.geometry.gouge;

import culm.geometry.numeric.Gauss;

/** Radial thickness of gouged cane over the angle phi from the middle of the blade, 0 to pi/2; symmetrical. mm and radians. */
public interface GougeSection {
    /** Radial thickness at phi, mm; may be 0 or negative far outside the blade, never NaN. */
    double thickness(double phi);

    /** Angles where the thickness is not smooth, ascending, within 0 to pi/2. */
    default double[] breaks() {
        return new double[0];
    }

    /** Integral of the thickness from 0 to phi, mm rad. */
    default double integral(double phi) {
        return Gauss.integrate(this::thickness, 0, phi, breaks());
    }
}
