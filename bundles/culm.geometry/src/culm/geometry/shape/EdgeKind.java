package culm.geometry.shape;

/** How the sides of the blade were cut. */
public enum EdgeKind {
    /** Square to the chord: a razor blade along a template. */
    SQUARE("square to the chord"),
    /** Along the tube's radius. */
    RADIAL("along the radius"),
    /** The inside width was measured as well. */
    TWO_WIDTHS("two widths");

    private final String label;

    EdgeKind(String label) {
        this.label = label;
    }

    /** The words on screen. */
    public String label() {
        return label;
    }
}
