package culm.geometry.guard;

import java.util.Locale;
import java.util.function.Supplier;

import culm.geometry.section.Section;

/** A section of a plug-in's own making behind its guard. */
record GuardedSection(Guard guard, Section section, double z) implements Section {
    @Override
    public double support(double psi) {
        return positive(() -> section.support(psi), "the distance of the outside from the axis");
    }

    @Override
    public double supportSlope(double psi) {
        return guard.number(() -> section.supportSlope(psi), () -> at("the slope of the outside"));
    }

    @Override
    public double curvatureRadius(double psi) {
        return guard.number(() -> section.curvatureRadius(psi), () -> at("the bend of the outside"));
    }

    @Override
    public double perimeter() {
        return positive(section::perimeter, "the perimeter");
    }

    @Override
    public double area() {
        return positive(section::area, "the area");
    }

    @Override
    public double smallestRadius() {
        return guard.number(section::smallestRadius, () -> at("the sharpest bend"));
    }

    private double positive(Supplier<Double> asked, String what) {
        double value = guard.number(asked, () -> at(what));
        if (value <= 0) {
            throw guard.failed("gives " + value + " for " + at(what));
        }
        return value;
    }

    private String at(String what) {
        return String.format(Locale.ROOT, "%s at %.1f mm", what, z);
    }
}
