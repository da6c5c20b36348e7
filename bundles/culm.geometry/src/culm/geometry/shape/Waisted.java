package culm.geometry.shape;

import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Pchip;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.words.Told;

/** Monotone cubic through (0, fold), (distance, throat), (folded length, end). */
public final class Waisted implements ShapeType {
    private static final Parameter AT = Parameter.length("throatAt", "throat from the fold", 1, 110, 26, 0.2, true, "Distance from the fold to the throat.");
    private static final Parameter THROAT = Parameter.length("throat", "width at the throat", 0.5, 30, 4.80, 0.05, true, "Width at the throat.");

    @Override
    public String id() {
        return "culm.shape.waisted";
    }

    @Override
    public String name() {
        return "waisted";
    }

    @Override
    public String help() {
        return "Three widths: at the fold, at the throat, at the end of the cane.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(ShapeParameters.FOLD, AT, THROAT, ShapeParameters.END);
    }

    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        double at = values.number("throatAt");
        if (at >= foldedLength) {
            throw new GeometryException("throatAt", "The throat at " + Told.given(at) + " " + Told.UNIT + " lies beyond the folded length of " + Told.given(foldedLength) + " " + Told.UNIT + ".");
        }
        return new PchipWidth(new Pchip(new double[] {0, at, foldedLength},
                new double[] {values.number("fold"), values.number("throat"), values.number("end")}));
    }
}
