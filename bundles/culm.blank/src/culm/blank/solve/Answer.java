package culm.blank.solve;

import java.util.List;
import java.util.Optional;

/**
 * What solving for one number gives.
 *
 * @param exact   values that give exactly what was wanted and that no rule stands against, the one nearest to today's first
 * @param allowed every stretch of values that no rule stands against, ascending
 * @param no      why there is no exact value, one sentence with the rule that blocks it; empty when there is one
 */
public record Answer(List<Double> exact, List<Allowed> allowed, Optional<Bound> no) {
    /** The exact value nearest to today's. */
    public Optional<Double> nearest() {
        return exact.stream().findFirst();
    }
}
