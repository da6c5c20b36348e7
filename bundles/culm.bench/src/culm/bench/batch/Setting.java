package culm.bench.batch;

import java.util.List;

/**
 * One tie length and the staples that are tied to it.
 *
 * @param tie        tie length, mm
 * @param staples    at least one, in the order of the batch
 * @param giveOrTake 95 % give or take of the turns left, for the staple in the middle; NaN when it cannot be told
 */
public record Setting(double tie, List<Served> staples, double giveOrTake) {
    /** Fewest turns left among its staples. */
    public double fewestTurns() {
        return staples.stream().mapToDouble(Served::turnsLeft).min().orElseThrow();
    }

    /** Most turns left among its staples. */
    public double mostTurns() {
        return staples.stream().mapToDouble(Served::turnsLeft).max().orElseThrow();
    }
}
