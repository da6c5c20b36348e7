package culm.geometry.words;

/** In what unit the lengths of a sentence are written. */
public interface LengthText {
    /** In which a length keeps every digit it has. */
    int AS_GIVEN = -1;

    /**
     * A length without its unit.
     *
     * @param mm     the length
     * @param digits decimals that say enough of it in mm, or {@link #AS_GIVEN}
     * @return its text
     */
    String number(double mm, int digits);

    /** What stands behind a length. */
    String sign();
}
