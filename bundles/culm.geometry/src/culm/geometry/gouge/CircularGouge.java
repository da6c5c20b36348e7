package culm.geometry.gouge;

import culm.geometry.numeric.Gauss;

/**
 * The inner face is a circle of radius r whose centre lies e above the tube's centre, towards the middle of the blade:
 * t = R - (e cos phi + sqrt(r^2 - e^2 sin^2 phi)). Where the ray misses the circle, the root is taken as 0.
 */
record CircularGouge(double tubeRadius, double cuttingRadius, double offset) implements GougeSection {
    /** Up to this share |e|/r one panel of the quadrature gives the integral over a quarter to the last digits. */
    private static final double NEARLY_ROUND = 0.4;

    @Override
    public double thickness(double phi) {
        double sin = Math.sin(phi);
        double s = offset * sin;
        double cos = phi <= Math.PI / 2 && phi >= -Math.PI / 2 ? Math.sqrt((1 - sin) * (1 + sin)) : Math.cos(phi);
        return tubeRadius - (offset * cos + Math.sqrt(Math.max(0, cuttingRadius * cuttingRadius - s * s)));
    }

    @Override
    public double integral(double phi) {
        return Math.abs(offset) < NEARLY_ROUND * cuttingRadius && phi <= Math.PI / 2 ? Gauss.panel(this::thickness, 0, phi) : GougeSection.super.integral(phi);
    }

    /** The thickness only grows or only falls from the middle to the side, within a quarter. */
    @Override
    public double smallest(double phi) {
        return Math.min(thickness(0), thickness(phi));
    }
}
