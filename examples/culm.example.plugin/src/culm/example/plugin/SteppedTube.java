package culm.example.plugin;

import java.util.List;
import java.util.OptionalDouble;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;

/** A tube with a step: a round lower taper, a short shoulder, and an upper taper from round to the oval top. Straight lines between. */
public final class SteppedTube implements StapleType {
    private static final String BOTTOM = "bottom";
    private static final String BELOW = "below";
    private static final String ABOVE = "above";
    private static final String STEP = "step";
    private static final String SHOULDER = "shoulder";
    private static final String WIDE = "topWide";
    private static final String NARROW = "topNarrow";

    @Override
    public String id() {
        return "example.staple.stepped";
    }

    @Override
    public String name() {
        return "stepped tube";
    }

    @Override
    public String help() {
        return "A round lower taper, a shoulder, and an upper taper up to an oval top.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(
                Parameter.length(WIDE, "top, wide", 0.5, 15, 3.38, 0.05, true, "Outside of the staple's top across its wide axis, on the mandrel."),
                Parameter.length(NARROW, "top, narrow", 0.2, 15, 2.09, 0.05, true, "Outside of the staple's top across its narrow axis, on the mandrel."),
                Parameter.length(BOTTOM, "bottom", 1, 20, 5.60, 0.05, true, "Outside diameter of the round bottom, without cork."),
                Parameter.length(STEP, "step below the top", 1, 90, 20, 0.2, true, "From the staple's top down to the upper edge of the shoulder."),
                Parameter.length(SHOULDER, "shoulder", 0.1, 10, 1, 0.1, false, "Height of the shoulder."),
                Parameter.length(BELOW, "below the step", 1, 20, 5.00, 0.05, true, "Outside diameter just below the shoulder."),
                Parameter.length(ABOVE, "above the step", 1, 20, 4.40, 0.05, true, "Outside diameter just above the shoulder."));
    }

    @Override
    public List<GeometryException> check(Values v) {
        return v.number(ABOVE) <= v.number(BELOW) ? List.of()
                : List.of(new GeometryException(ABOVE, "Above the step the tube is wider (" + v.number(ABOVE) + " mm) than below it (" + v.number(BELOW) + " mm)."));
    }

    @Override
    public StapleOutside outside(Values v, double length) {
        double upper = length - v.number(STEP);
        double lower = upper - v.number(SHOULDER);
        if (lower <= 0) {
            throw new GeometryException(STEP, "On a staple of " + length + " mm the shoulder would lie below the bottom.");
        }
        return new Outside(new double[] {0, lower, upper, length},
                new double[] {v.number(BOTTOM) / 2, v.number(BELOW) / 2, v.number(ABOVE) / 2, v.number(WIDE) / 2},
                new double[] {v.number(BOTTOM) / 2, v.number(BELOW) / 2, v.number(ABOVE) / 2, v.number(NARROW) / 2});
    }

    @Override
    public Values topScaled(Values values, double k) {
        return values.with(WIDE, k * values.number(WIDE)).with(NARROW, k * values.number(NARROW));
    }

    /** Semi-axes (a, b) at four heights, straight between them. */
    private record Outside(double[] z, double[] a, double[] b) implements StapleOutside {
        @Override
        public double length() {
            return z[3];
        }

        @Override
        public Section section(double height) {
            int i = height < z[1] ? 0 : height < z[2] ? 1 : 2;
            double u = (height - z[i]) / (z[i + 1] - z[i]);
            return new Ellipse(a[i] + u * (a[i + 1] - a[i]), b[i] + u * (b[i + 1] - b[i]));
        }

        @Override
        public double[] breaks() {
            return new double[] {z[1], z[2]};
        }

        /** Exact, piece by piece: (pi H / 6)(2 a0 b0 + 2 a1 b1 + a0 b1 + a1 b0). */
        @Override
        public OptionalDouble closedVolume() {
            double volume = 0;
            for (int i = 0; i < 3; i++) {
                volume += Math.PI * (z[i + 1] - z[i]) / 6 * (2 * a[i] * b[i] + 2 * a[i + 1] * b[i + 1] + a[i] * b[i + 1] + a[i + 1] * b[i]);
            }
            return OptionalDouble.of(volume);
        }
    }
}
