package culm.explore.internal.fast;

/** How one blank of a block closes; the numbers are what a block's column of states holds. */
public final class State {
    /** The sides close inside the overlap and stay closed to the staple's top; closed nowhere else. */
    public static final byte CLOSES = 0;
    /** Open at the staple's top, and closed nowhere. */
    public static final byte NEVER = 1;
    /** Closed from the end of the cane on. */
    public static final byte EVERYWHERE = 2;
    /** Closes, and is also closed in a stretch below that opens again. */
    public static final byte AGAIN = 3;
    /** Open at the staple's top, but closed in a stretch below. */
    public static final byte ONLY_BELOW = 4;
    /** Cannot be computed. */
    public static final byte REFUSED = 5;
    /** Not proven by the quick way; the reference path decides. */
    static final byte UNSURE = 6;

    private State() {
    }
}
