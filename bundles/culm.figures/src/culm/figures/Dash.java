package culm.figures;

/** How a line is broken: lengths of stroke and gap in drawing units, empty for a whole line. */
public enum Dash {
    SOLID(), DASHED(5, 3.5), DOTTED(1.5, 2.5);

    private final double[] lengths;

    Dash(double... lengths) {
        this.lengths = lengths;
    }

    /** Stroke and gap in turn. */
    public double[] lengths() {
        return lengths.clone();
    }
}
