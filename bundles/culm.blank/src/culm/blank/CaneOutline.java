package culm.blank;

import culm.geometry.shape.Outline;

/** The flat outline of a blank's cane. */
public final class CaneOutline {
    private CaneOutline() {
    }

    /**
     * The outline of the cane as cut, with the ears that the blank has.
     * @throws culm.geometry.GeometryException when the parts cannot be built
     */
    public static Outline of(Blank blank) {
        Parts parts = blank.parts();
        return new Outline(parts.width(), blank.cut().measure(), parts.gouge().tubeRadius(), parts.foldedLength(), given(blank, Inputs.EARS_WIDTH),
                given(blank, Inputs.EARS_LENGTH));
    }

    private static double given(Blank blank, String path) {
        double value = blank.number(path);
        return Double.isNaN(value) ? 0 : value;
    }
}
