package culm.bench.batch;

/** What is measured on each staple of a batch. */
public enum Dimension {
    LENGTH("length", "Bottom of the staple to its top."),
    TOP_WIDE("top wide", "Outside of the top across its wide axis, on the mandrel."),
    TOP_NARROW("top narrow", "Outside of the top across its narrow axis, on the mandrel.");

    private final String label;
    private final String help;

    Dimension(String label, String help) {
        this.label = label;
        this.help = help;
    }

    /** The word at the bench and at the head of a column. */
    public String label() {
        return label;
    }

    /** Where to put the caliper, one sentence. */
    public String help() {
        return help;
    }
}
