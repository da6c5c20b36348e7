package culm.blank.rules;

/** How bad a finding is; each has its own sign and word beside its colour. */
public enum Severity {
    /** The blank will not work. */
    ERROR("does not work"),
    /** It may not work, or a limit is passed. */
    WARNING("look at this"),
    /** Worth doing. */
    ADVICE("worth doing"),
    /** Looked at, and all is well. */
    FINE("fits");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word that stands beside the sign. */
    public String word() {
        return word;
    }
}
