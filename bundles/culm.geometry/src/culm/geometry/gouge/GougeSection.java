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

    /** Integral of the thickness from 0 to phi, mm rad. Here by Gauss quadrature between the breaks, to 1e-13. */
    default double integral(double phi) {
        return Gauss.integrate(this::thickness, 0, phi, breaks());
    }

    /** Smallest thickness from 0 to phi, mm. Here from samples {@code phi/24} apart and the breaks; overridden where it is known. */
    default double smallest(double phi) {
        int samples = 24;
        double least = thickness(phi);
        for (int i = 0; i < samples; i++) {
            least = Math.min(least, thickness(phi * i / samples));
        }
        for (double cut : breaks()) {
            if (cut < phi) {
                least = Math.min(least, thickness(cut));
            }
        }
        return least;
    }
}
