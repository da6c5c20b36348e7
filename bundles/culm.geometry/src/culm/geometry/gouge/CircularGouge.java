package culm.geometry.gouge;

/**
 * The inner face is a circle of radius r whose centre lies e above the tube's centre, towards the middle of the blade:
 * t = R - (e cos phi + sqrt(r^2 - e^2 sin^2 phi)). Where the ray misses the circle, the root is taken as 0.
 */
record CircularGouge(double tubeRadius, double cuttingRadius, double offset) implements GougeSection {
    @Override
    public double thickness(double phi) {
        double s = offset * Math.sin(phi);
        return tubeRadius - (offset * Math.cos(phi) + Math.sqrt(Math.max(0, cuttingRadius * cuttingRadius - s * s)));
    }
}
