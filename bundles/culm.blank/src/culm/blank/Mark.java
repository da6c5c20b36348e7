package culm.blank;

/** The marks along a blank, in the usual order from the bottom. */
public enum Mark {
    CORK_TOP("corkTop", "cork", Inputs.CORK_TOP),
    WRAP_BOTTOM("wrapBottom", "bottom of the wrap", Inputs.WRAP_BOTTOM),
    CANE_END("caneEnd", "end of the cane", ""),
    SIDES_CLOSE("sidesClose", "sides close", ""),
    WRAP_TOP("wrapTop", "top of the wrap", Inputs.WRAP_TOP),
    STAPLE_TOP("stapleTop", "staple top", Inputs.STAPLE_LENGTH),
    FINISHED("finished", "finished", Inputs.FINISHED),
    FOLD("fold", "fold", Inputs.TIE_LENGTH);

    private final String id;
    private final String label;
    private final String path;

    Mark(String id, String label, String path) {
        this.id = id;
        this.label = label;
        this.path = path;
    }

    /** Name in machine-readable output. */
    public String id() {
        return id;
    }

    /** The words at the mark. */
    public String label() {
        return label;
    }

    /** The input that moves it; empty for marks that are computed. */
    public String path() {
        return path;
    }
}
