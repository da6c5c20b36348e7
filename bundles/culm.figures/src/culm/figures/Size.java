package culm.figures;

/** What a text is for; its height of type in drawing units (1/96 inch). */
public enum Size {
    /** Ticks and remarks. */
    SMALL(11),
    /** Labels and captions. */
    BODY(13),
    /** The head of a part of a page. */
    HEADING(15),
    /** A name at the top. */
    TITLE(20),
    /** Numbers that are read with wet hands. */
    LARGE(26),
    /** The one number of a page. */
    HUGE(40);

    private final double units;

    Size(double units) {
        this.units = units;
    }

    /** Height of type, drawing units. */
    public double units() {
        return units;
    }
}
