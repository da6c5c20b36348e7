package culm.geometry.gouge;

import java.util.List;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;

/** Middle thickness and the radius of the cutter: e = R - r - t0. */
public final class OffsetCircle implements GougeType {
    private static final Parameter RADIUS = Parameter.length("radius", "cutting radius", 1, 30, 5.50, 0.05, false,
            "Radius of the circle that the gouging blade cuts.");

    @Override
    public String id() {
        return "culm.gouge.offset";
    }

    @Override
    public String name() {
        return "offset circle";
    }

    @Override
    public String help() {
        return "The middle thickness and the radius that the gouging blade cuts.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(GougeParameters.MIDDLE, RADIUS);
    }

    @Override
    public GougeSection section(Values values, double tubeRadius) {
        double r = values.number("radius");
        return new CircularGouge(tubeRadius, r, tubeRadius - r - values.number("middle"));
    }
}
