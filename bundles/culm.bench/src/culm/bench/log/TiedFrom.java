package culm.bench.log;

/**
 * What a blank was tied from, in words or as addresses of parts; empty where it was not noted.
 */
public record TiedFrom(String design, String staple, String stapleBatch, String gouge, String caneBatch, String shape, String thread) {
    /** Nothing noted. */
    public static final TiedFrom NOTHING = new TiedFrom("", "", "", "", "", "", "");
}
