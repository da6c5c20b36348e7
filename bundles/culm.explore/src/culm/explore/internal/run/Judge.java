package culm.explore.internal.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import culm.blank.Limits;
import culm.blank.rules.Assumed;
import culm.blank.rules.PlugIns;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.TiePerTurn;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Columns;

/**
 * Judges a block of closed blanks by rules. A blank fails a rule that has an error or a warning to say about it, each drawn blank taken exactly as it is
 * drawn. The rules that ship are judged on the block's columns; any other is handed an assessment, blank by blank.
 */
public final class Judge {
    /** Most rules that can be told apart. */
    public static final int MOST = 31;
    /** Rules that advise, or that speak of plug-ins: no blank fails them. */
    private static final Set<Class<? extends Rule>> ADVICE = Set.of(Assumed.class, TiePerTurn.class, PlugIns.class);
    private final List<Rule> rules = new ArrayList<>();
    private final List<QuickRule> quick = new ArrayList<>();
    private final OneByOne slow;
    private final int[] failed = new int[Columns.SIZE];

    /** @throws IllegalArgumentException with more than {@link #MOST} rules */
    public Judge(Rules given, Limits limits, Columns columns, BlockCloser closer) {
        List<Rule> others = new ArrayList<>();
        int others0 = 0;
        for (Rule rule : given.all()) {
            if (ADVICE.contains(rule.getClass())) {
                continue;
            }
            int bit = 1 << rules.size();
            rules.add(rule);
            QuickRule known = QuickRules.of(rule, bit, limits, columns, closer);
            if (known != null) {
                quick.add(known);
            } else {
                others.add(rule);
                others0 |= bit;
            }
        }
        if (rules.size() > MOST) {
            throw new IllegalArgumentException("At most " + MOST + " rules can be counted at once, not " + rules.size() + ".");
        }
        slow = others.isEmpty() ? null : new OneByOne(others, others0, limits, columns);
    }

    /** The rules that are counted, in the order of the bits of {@link #failed()}. */
    public List<Rule> rules() {
        return rules;
    }

    /** The rules that need an assessment of every blank. */
    public List<Rule> oneByOne() {
        return slow == null ? List.of() : slow.rules();
    }

    /** Judges the first n lanes. */
    public void judge(int n) {
        java.util.Arrays.fill(failed, 0, n, 0);
        for (QuickRule rule : quick) {
            rule.judge(failed, n);
        }
        if (slow != null) {
            slow.judge(failed, n);
        }
    }

    /** A bit for each rule that a lane fails. */
    public int[] failed() {
        return failed;
    }
}
