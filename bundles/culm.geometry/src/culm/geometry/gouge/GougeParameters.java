package culm.geometry.gouge;

import culm.geometry.profile.Parameter;
import culm.geometry.words.Told;

/** Numbers that several types share. */
final class GougeParameters {
    static final Parameter MIDDLE = Parameter.length("middle", "gouge, middle", 0.05, 3, 0.60, 0.02, true,
            "Thickness in the middle of the blade. Common practice for oboe " + Told.given(0.55, "0.55") + " to " + Told.given(0.6, "0.60") + " " + Told.UNIT + ".");

    private GougeParameters() {
    }
}
