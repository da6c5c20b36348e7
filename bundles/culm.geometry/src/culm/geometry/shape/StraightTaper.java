package culm.geometry.shape;

import java.util.List;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;

/** Straight sides from the fold to the end of the cane. */
public final class StraightTaper implements ShapeType {
    @Override
    public String id() {
        return "culm.shape.straight";
    }

    @Override
    public String name() {
        return "straight taper";
    }

    @Override
    public String help() {
        return "Straight sides from the fold to the end of the cane.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(ShapeParameters.FOLD, ShapeParameters.END);
    }

    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        double fold = values.number("fold");
        double end = values.number("end");
        return new ShapeWidth() {
            @Override
            public double to() {
                return foldedLength;
            }

            @Override
            public double at(double s) {
                if (s < 0 || s > foldedLength) {
                    throw new IllegalArgumentException(s + " is outside the cane");
                }
                return fold + s / foldedLength * (end - fold);
            }
        };
    }
}
