package culm.explore.internal.run;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Severity;
import culm.explore.internal.fast.Columns;

/** Judges by rules that need an assessment: every lane is built and assessed, without give or take. A rule that throws fails the blank. */
final class OneByOne {
    private final List<Rule> rules;
    private final int bits;
    private final Limits limits;
    private final Columns columns;

    OneByOne(List<Rule> rules, int bits, Limits limits, Columns columns) {
        this.rules = rules;
        this.bits = bits;
        this.limits = limits;
        this.columns = columns;
    }

    List<Rule> rules() {
        return rules;
    }

    void judge(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            Assessment assessment = Assessor.assess(exact(columns.blank(l)));
            int bit = 0;
            for (Rule rule : rules) {
                bit = next(bit);
                failed[l] |= fails(rule, assessment) ? bit : 0;
            }
        }
    }

    private int next(int bit) {
        int rest = bits & -(bit << 1);
        return bit == 0 ? Integer.lowestOneBit(bits) : Integer.lowestOneBit(rest);
    }

    private boolean fails(Rule rule, Assessment assessment) {
        try {
            return rule.judge(assessment, limits).stream().map(Finding::severity).anyMatch(s -> s == Severity.ERROR || s == Severity.WARNING);
        } catch (RuntimeException e) {
            return true;
        }
    }

    /** The blank exactly as drawn: nothing gives or takes; a fitted length stays as a number. */
    static Blank exact(Blank blank) {
        BlankBuilder edit = blank.edit();
        if (blank.fit().isPresent()) {
            double delta = blank.number(Inputs.DELTA);
            edit.fit(null).set(Inputs.DELTA, delta);
        }
        for (Input input : blank.inputs()) {
            edit.tolerance(input.path(), 0, true);
        }
        return edit.build();
    }
}
