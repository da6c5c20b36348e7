package culm.bench.log;

/**
 * A share with its 95 % interval by Wilson's score (E. B. Wilson 1927, J. Am. Stat. Assoc. 22, 209): honest for few blanks and for shares of none
 * or all.
 *
 * @param hits how many
 * @param of   out of how many
 */
public record Share(int hits, int of) {
    private static final double Z = 1.959963984540054;

    /** @throws IllegalArgumentException when the counts do not go together */
    public Share {
        if (hits < 0 || hits > of) {
            throw new IllegalArgumentException(hits + " out of " + of + " is no share.");
        }
    }

    /** The share itself; NaN out of none. */
    public double value() {
        return of == 0 ? Double.NaN : (double) hits / of;
    }

    /** Lower end of the interval; 0 out of none. */
    public double low() {
        return hits == 0 ? 0 : Math.max(0, middle() - half());
    }

    /** Upper end of the interval; 1 out of none. */
    public double high() {
        return hits == of ? 1 : Math.min(1, middle() + half());
    }

    private double middle() {
        return (hits + Z * Z / 2) / (of + Z * Z);
    }

    private double half() {
        double p = value();
        return Z / (of + Z * Z) * Math.sqrt(of * p * (1 - p) + Z * Z / 4);
    }

    /** As it is said: "3 of 12, 25 % (9 to 53 %)". */
    public String text() {
        return of == 0 ? "none noted" : hits + " of " + of + ", " + percent(value()) + " % (" + percent(low()) + " to " + percent(high()) + " %)";
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }
}
