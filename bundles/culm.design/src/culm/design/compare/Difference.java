package culm.design.compare;

import java.util.List;
import java.util.function.UnaryOperator;

import culm.geometry.words.LengthText;
import culm.geometry.words.Told;

/**
 * One value that was changed; numbers have their units, lengths mm.
 *
 * @param path   where it is; stable, names rows and parts by their ids
 * @param label  where it is in words: {@code shape, width at 22 mm from the fold}
 * @param before what both started from; empty when there was nothing
 * @param yours  what you have; empty when there is nothing
 * @param theirs what the others have; empty when there is nothing
 * @param side   who changed it
 * @param marked label and values as {@link Told} writes them, so that they can be written in another unit
 */
public record Difference(String path, String label, String before, String yours, String theirs, Side side, List<String> marked) {
    /** Fixed from then on. */
    public Difference {
        marked = List.copyOf(marked);
    }

    /** A difference whose words hold no lengths. */
    public Difference(String path, String label, String before, String yours, String theirs, Side side) {
        this(path, label, before, yours, theirs, side, List.of(label, before, yours, theirs));
    }

    /** The same with its lengths in another unit. */
    public Difference in(LengthText unit) {
        return of(path, side, marked, text -> Told.in(text, unit));
    }

    /** A difference with its lengths in mm. */
    static Difference of(String path, Side side, List<String> marked) {
        return of(path, side, marked, Told::mm);
    }

    private static Difference of(String path, Side side, List<String> marked, UnaryOperator<String> written) {
        List<String> said = marked.stream().map(written).toList();
        return new Difference(path, said.get(0), said.get(1), said.get(2), said.get(3), side, marked);
    }
}
