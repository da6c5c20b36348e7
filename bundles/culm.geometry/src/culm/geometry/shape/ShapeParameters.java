package culm.geometry.shape;

import culm.geometry.profile.Parameter;

/** Widths that several types share. */
final class ShapeParameters {
    static final Parameter FOLD = Parameter.length("fold", "width at the fold", 0.5, 30, 7.00, 0.05, true, "Width of the cane as cut, at the fold, without ears.");
    static final Parameter END = Parameter.length("end", "width at the end", 0.5, 30, 4.35, 0.05, true, "Width at the end of the cane.");

    private ShapeParameters() {
    }
}
