package culm.bench.batch;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

import culm.geometry.words.Told;

/**
 * What tie lengths do on one staple.
 *
 * @param ranges    the tie lengths it allows, ascending; none when it fits nowhere
 * @param turnsLeft turns left at a tie length; NaN when the sides never close or it cannot be computed, infinite when they close further
 *                  down than the limits need to know
 * @param reason    why there are no ranges, one sentence, its lengths as {@link Told} keeps them; empty when there are
 */
public record StapleTies(List<TieRange> ranges, DoubleUnaryOperator turnsLeft, String reason) {
    /** Whether this tie length is allowed. */
    public boolean allows(double tie) {
        return ranges.stream().anyMatch(r -> tie >= r.low() - 1e-9 && tie <= r.high() + 1e-9);
    }
}
