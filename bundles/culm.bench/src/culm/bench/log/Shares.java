package culm.bench.log;

import culm.explore.Share;

/** Shares in words. */
public final class Shares {
    private Shares() {
    }

    /** As it is said: "3 of 12, 25 % (9 to 53 %)". */
    public static String text(Share share) {
        return share.of() == 0 ? "none noted" : share.hits() + " of " + share.of() + ", " + percent(share.value()) + " % (" + percent(share.low()) + " to " + percent(share.high()) + " %)";
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }
}
