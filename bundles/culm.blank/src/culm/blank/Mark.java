package culm.blank;

/** The marks along a blank, in the usual order from the bottom. */
public enum Mark {
    /** Top of the cork; absent where there is none. */
    CORK_TOP("corkTop", "cork", Inputs.CORK_TOP),
    /** Where the thread ends below; absent without it and without a cork. */
    WRAP_BOTTOM("wrapBottom", "bottom of the wrap", Inputs.WRAP_BOTTOM),
    /** End of the cane. */
    CANE_END("caneEnd", "end of the cane", ""),
    /** Where the sides close; absent when they never do. */
    SIDES_CLOSE("sidesClose", "sides close", ""),
    /** Where the thread stops. */
    WRAP_TOP("wrapTop", "top of the wrap", Inputs.WRAP_TOP),
    /** The staple's top. */
    STAPLE_TOP("stapleTop", "staple top", Inputs.STAPLE_LENGTH),
    /** Tip of the finished reed; may be absent. */
    FINISHED("finished", "finished", Inputs.FINISHED),
    /** The fold. */
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
