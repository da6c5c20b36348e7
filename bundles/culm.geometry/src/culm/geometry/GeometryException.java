package culm.geometry;

import culm.geometry.words.Told;

/**
 * A geometry that cannot exist, told in one sentence for the person at the bench.
 * {@link #path()} names the input that has to change ({@code staple.wall}), or is empty when no single one does.
 */
public final class GeometryException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private final String path;
    private final String told;

    /**
     * A refusal.
     * @param path     input path, may be empty
     * @param sentence one clear sentence; its lengths may stand as {@link Told} writes them
     */
    public GeometryException(String path, String sentence) {
        super(Told.mm(sentence));
        this.told = sentence;
        this.path = path;
    }

    /** Input path such as {@code gouge.middle}; empty when no single input is at fault. */
    public String path() {
        return path;
    }

    /** The sentence as it was given: its lengths can be written in another unit. */
    public String told() {
        return told;
    }

    /** The same refusal, its path put behind a part's prefix unless it already has one. */
    public GeometryException under(String prefix) {
        return path.startsWith(prefix + ".") ? this : new GeometryException(path.isEmpty() ? prefix : prefix + "." + path, told);
    }
}
