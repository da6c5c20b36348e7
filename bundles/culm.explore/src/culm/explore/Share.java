package culm.explore;

/**
 * A share and its 95 % interval: Wilson's score interval (E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212, doi:10.1080/01621459.1927.10502953), which
 * stays honest near 0 and 1.
 *
 * @param hits how often
 * @param of   out of how many
 */
public record Share(long hits, long of) {
    private static final double Z = 1.959963984540054;

    /** The share; NaN out of none. */
    public double value() {
        return (double) hits / of;
    }

    public double low() {
        return of == 0 ? 0 : Math.max(0, middle() - half());
    }

    public double high() {
        return of == 0 ? 1 : Math.min(1, middle() + half());
    }

    private double middle() {
        return (hits + Z * Z / 2) / (of + Z * Z);
    }

    private double half() {
        return Z / (of + Z * Z) * Math.sqrt(value() * (1 - value()) * of + Z * Z / 4);
    }
}
