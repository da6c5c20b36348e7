package culm.bench.log;

import java.util.function.Function;

/** By what blanks are put together. */
public enum GroupBy {
    PERSON("person", Tied::by),
    CANE("cane batch", t -> t.from().caneBatch()),
    STAPLES("staple batch", t -> t.from().stapleBatch()),
    SHAPE("shape", t -> t.from().shape()),
    DESIGN("design", t -> t.from().design()),
    ENDS("ends of the cane", t -> t.how().ends()),
    FOR("made for", Tied::madeFor);

    private final String words;
    private final Function<Tied, String> key;

    GroupBy(String words, Function<Tied, String> key) {
        this.words = words;
        this.key = key;
    }

    /** The words at the bench. */
    public String words() {
        return words;
    }

    /** Which group a blank belongs to; empty when it was not noted. */
    public String of(Tied tied) {
        return key.apply(tied);
    }
}
