package culm.geometry.staple;

import java.util.List;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;

/** The three numbers that the round-bottomed, oval-topped types share. */
final class OvalTop {
    static final String BOTTOM = "bottom";
    static final String WIDE = "topWide";
    static final String NARROW = "topNarrow";

    static final List<Parameter> PARAMETERS = List.of(
            Parameter.length(WIDE, "top, wide", 0.5, 15, 3.38, 0.05, true, "Outside of the staple's top across its wide axis, on the mandrel."),
            Parameter.length(NARROW, "top, narrow", 0.2, 15, 2.09, 0.05, true, "Outside of the staple's top across its narrow axis, on the mandrel."),
            Parameter.length(BOTTOM, "bottom", 1, 20, 5.40, 0.05, true, "Outside diameter of the round bottom, without cork."));

    private OvalTop() {
    }

    static Values scaled(Values values, double k) {
        return values.with(WIDE, k * values.number(WIDE)).with(NARROW, k * values.number(NARROW));
    }
}
