package culm.geometry.gouge;

import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.words.Told;

/** Thickness in the middle and at a half-chord x: c = R - t0, q = R - t_side, phi = asin(x/R), e = (c^2 - q^2)/(2 (c - q cos phi)), r = c - e. */
public final class MiddleAndSide implements GougeType {
    private static final Parameter SIDE = Parameter.length("side", "gouge, side", 0.01, 3, 0.45, 0.02, true,
            "Thickness near the side. Common practice for oboe " + Told.given(0.4, "0.40") + " to " + Told.given(0.5, "0.50") + " " + Told.UNIT + ".");
    private static final Parameter AT = Parameter.length("sideAt", "side measured at", 0.5, 15, 3.5, 0.1, false,
            "How far from the middle the side was measured, straight across (half-chord).");

    @Override
    public String id() {
        return "culm.gouge.middleAndSide";
    }

    @Override
    public String name() {
        return "middle and side";
    }

    @Override
    public String help() {
        return "Thickness measured in the middle and near the side.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(GougeParameters.MIDDLE, SIDE, AT);
    }

    @Override
    public GougeSection section(Values values, double tubeRadius) {
        double x = values.number("sideAt");
        if (x >= tubeRadius) {
            throw new GeometryException("sideAt", "The side cannot be measured " + Told.given(x) + " " + Told.UNIT + " from the middle of a tube of " + Told.given(2 * tubeRadius) + " " + Told.UNIT + ".");
        }
        double c = tubeRadius - values.number("middle");
        double q = tubeRadius - values.number("side");
        double below = c - q * Math.sqrt(1 - x * x / (tubeRadius * tubeRadius));
        if (!(c > 0 && q > 0 && below > 0)) {
            throw new GeometryException("side", "No circle cuts " + Told.given(values.number("middle")) + " " + Told.UNIT + " in the middle and " + Told.given(values.number("side")) + " " + Told.UNIT
                    + " at the side of a tube of " + Told.given(2 * tubeRadius) + " " + Told.UNIT + ".");
        }
        double e = (c - q) * (c + q) / (2 * below);
        return new CircularGouge(tubeRadius, c - e, e);
    }
}
