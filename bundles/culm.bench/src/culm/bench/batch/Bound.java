package culm.bench.batch;

/** What a tie length may fail, and what ends the tie lengths that a staple allows. */
public enum Bound {
    NOT_COMPUTED("it cannot be computed"),
    CANE_ENDS_WRONG("the end of the cane would not lie under the wrap and above the cork"),
    FINISHED_LENGTH("the finished length would not lie below the fold"),
    FEWEST_TURNS("too few turns would be left"),
    MOST_TURNS("too many turns would be left"),
    PINCHED("the sides would be pinched too much at the staple's top"),
    SHORTEST_TIE("the shortest tie looked at"),
    LONGEST_TIE("the longest tie looked at");

    private final String words;

    Bound(String words) {
        this.words = words;
    }

    /** The words for the bench, to stand after "beyond it, " or "because ". */
    public String words() {
        return words;
    }
}
