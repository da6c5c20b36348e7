package culm.design.compare;

/** Who changed something, compared with what both started from. */
public enum Side {
    /** Only you. */
    YOURS,
    /** Only the others. */
    THEIRS,
    /** Both, to the same. */
    BOTH,
    /** Both, differently: somebody has to choose. */
    CONFLICT
}
