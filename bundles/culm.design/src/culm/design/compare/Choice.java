package culm.design.compare;

/** Which of three versions of one value is kept. */
public enum Choice {
    /** Yours. */
    YOURS,
    /** Theirs. */
    THEIRS,
    /** As it was before. */
    BEFORE
}
