package culm.design.compare;

/**
 * One value that was changed.
 *
 * @param path   where it is; stable, names rows and parts by their ids
 * @param label  where it is in words: {@code shape, width at 22 mm from the fold}
 * @param before what both started from; empty when there was nothing
 * @param yours  what you have; empty when there is nothing
 * @param theirs what the others have; empty when there is nothing
 * @param side   who changed it
 */
public record Difference(String path, String label, String before, String yours, String theirs, Side side) {
}
