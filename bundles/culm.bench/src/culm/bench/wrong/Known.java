package culm.bench.wrong;

import culm.figures.Numbers;
import culm.geometry.words.Told;

/**
 * A length that was measured on the blank and differs from its plan.
 *
 * @param words   the bench's words
 * @param planned mm
 * @param seen    mm
 * @param turns   turns left that this alone changes, seen minus planned
 */
public record Known(String words, double planned, double seen, double turns) {
    /** As it is said: "tie length 71.1 mm, planned 72.0 mm: that alone makes 0.9 turns more". */
    public String text() {
        return Told.mm(told());
    }

    /** The same, its lengths as {@link Told} keeps them. */
    public String told() {
        return words + " " + Told.length(seen, 1) + ", planned " + Told.length(planned, 1) + ": that alone makes " + Numbers.fixed(Math.abs(turns), 1) + " turns "
                + (turns >= 0 ? "more" : "fewer");
    }
}
