package culm.bench.learn;

import java.util.List;
import java.util.Optional;

/**
 * What a group of blanks teaches.
 *
 * @param group     whose blanks
 * @param lessons   the blanks it rests on, in their order; after a change only those since
 * @param all       how many blanks of the group could be used
 * @param refused   why nothing is said; empty when something is
 * @param delta     the length, mm
 * @param half      half of its 95 % interval, mm
 * @param spread    standard deviation of single blanks, mm
 * @param perTurn   how much of it is one turn, mm
 * @param next      95 % give or take for the next blank, turns
 * @param without   how far predictions without it were off, root mean square, turns
 * @param with      the same with the length learned from the other blanks, each held back in its turn
 * @param worthIt   whether it is told from none at all (99 %) and predicts better: only then it is offered
 * @param change    a sudden change that was noticed, in words; empty without one
 * @param drift     a steady move that was noticed
 */
public record Learned(Group group, List<Lesson> lessons, int all, String refused, double delta, double half, double spread, double perTurn, double next, double without,
        double with, boolean worthIt, String change, Optional<Drift> drift) {
    /** Said with every result: what the blanks cannot separate, and what would. */
    public static final String CANNOT_SEPARATE = "This one length stands for swelling, the thickness lost under the thread and a bias of the widths together; no number of "
            + "blanks can tell them apart. To separate them, measure the same piece dry and wet, and the outside width after tying.";

    static Learned refused(Group group, int all, String why, String change) {
        return new Learned(group, List.of(), all, why, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, false, change, Optional.empty());
    }

    /** Whether anything is said. */
    public boolean said() {
        return refused.isEmpty();
    }

    /** The length as turns: how many more turns are left than the model says without it. */
    public double turns() {
        return delta / perTurn;
    }
}
