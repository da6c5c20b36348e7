package culm.bench.wrong;

/** What can be said of a blank. */
public enum Verdict {
    /** Seen as planned, as well as turns can be read. */
    AS_PLANNED,
    /** The lengths that were measured on it explain it. */
    EXPLAINED,
    /** Off, but no more than the give or take of the inputs together allows. */
    WITHIN_GIVE_OR_TAKE,
    /** The two sides differ by more than the blank is off as a whole: crooked. */
    CROOKED,
    /** Something else was otherwise than noted. */
    SOMETHING_ELSE,
    /** It cannot be told. */
    CANNOT_TELL
}
