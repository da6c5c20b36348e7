package culm.figures;

/** How much room text takes, drawing units; a back end supplies it for its own font. */
public interface TextMeasure {
    /** Width of one line. */
    double width(String text, Size size, boolean bold);

    /** From the baseline up to the top of the highest letters. */
    double ascent(Size size);

    /** From the baseline down to the end of the deepest letters. */
    double descent(Size size);

    /** Height of one line, from the highest letters' top to the deepest letters' end. */
    default double line(Size size) {
        return ascent(size) + descent(size);
    }
}
