package culm.workbench.internal.pair;

import java.util.List;
import java.util.Optional;

import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.design.Bridge;
import culm.design.DesignComparison;
import culm.design.DesignedBlank;
import culm.figures.reed.Reed;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.graphs.OverlayCanvas.Two;

/**
 * What is shown of two designs.
 *
 * @param comparison inputs that differ and results; empty when one cannot be told
 * @param first the first one's geometry
 * @param second the second one's
 * @param limits by which marks are judged
 * @param problem why it cannot be told; empty when it can
 */
record PairShown(Optional<DesignComparison> comparison, Optional<Reed> first, Optional<Reed> second, Limits limits, String problem) {
    static final PairShown NOTHING = new PairShown(Optional.empty(), Optional.empty(), Optional.empty(), Limits.STANDARD, "");

    /** Reads and computes both as they are saved; takes some milliseconds. */
    static PairShown of(PairInput input, Bridge bridge, Rules rules) {
        try {
            DesignedBlank first = bridge.read(input.first());
            DesignedBlank second = bridge.read(input.second());
            DesignComparison comparison = DesignComparison.of(first, second, rules);
            return new PairShown(Optional.of(comparison), Optional.of(Reed.of(comparison.left().assessment())), Optional.of(Reed.of(comparison.right().assessment())),
                    first.limits(), "");
        } catch (FileProblemException e) {
            return new PairShown(Optional.empty(), Optional.empty(), Optional.empty(), Limits.STANDARD, e.problem().message());
        }
    }

    /** Both for drawing; empty when one cannot be told. */
    Optional<Two> two() {
        return first.flatMap(a -> second.map(b -> new Two(a, name(true), b, name(false), limits)));
    }

    String name(boolean left) {
        return comparison.map(c -> left ? c.left().name() : c.right().name()).orElse("");
    }

    List<Verdict> verdicts() {
        return comparison.map(c -> List.of(c.left().verdict(), c.right().verdict())).orElse(List.of());
    }
}
