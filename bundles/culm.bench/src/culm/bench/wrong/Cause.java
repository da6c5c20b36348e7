package culm.bench.wrong;

import culm.figures.Numbers;
import culm.geometry.words.Told;

/**
 * One cause that would explain what was seen.
 *
 * @param id        short name: tie, wrapTop, count, top, width, gouge, crooked, ...
 * @param words     the bench's words
 * @param off       how far it would have to be off, in its unit; signed
 * @param how       the word for that direction, such as "shorter"
 * @param unit      mm, turns, or empty for a share
 * @param tolerance its own give or take
 * @param toldCheck what to look at next, one sentence, its lengths as {@link Told} keeps them
 */
public record Cause(String id, String words, double off, String how, String unit, double tolerance, String toldCheck) {
    /** How far off, in units of its own tolerance: the smaller, the more likely. */
    public double units() {
        return Math.abs(off) / tolerance;
    }

    /** What to look at next, one sentence, lengths in mm. */
    public String check() {
        return Told.mm(toldCheck);
    }

    /** As it is said: "tie length 0.9 mm longer than noted, 3.0 times its give or take of 0.3". */
    public String text() {
        return Told.mm(told());
    }

    /** The same, its lengths as {@link Told} keeps them. */
    public String told() {
        return words + " " + amount(Math.abs(off)) + " " + how + " than noted, " + Numbers.fixed(units(), 1) + " times its give or take of " + amount(tolerance);
    }

    private String amount(double value) {
        return switch (unit) {
            case "mm" -> Told.length(value, tolerance < 0.195 ? 2 : 1);
            case "turns" -> Numbers.fixed(value, 1) + (value == 1 ? " turn" : " turns");
            default -> Numbers.fixed(100 * value, 1) + " %";
        };
    }
}
