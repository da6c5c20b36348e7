package culm.bench.log;

/** What a leak test showed. */
public enum Leak {
    NONE("none"), SLIGHT("slight"), LEAKS("leaks");

    private final String word;

    Leak(String word) {
        this.word = word;
    }

    /** The word on the card and in tables. */
    public String word() {
        return word;
    }
}
