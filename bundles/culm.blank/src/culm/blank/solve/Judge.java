package culm.blank.solve;

import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;

/**
 * Whether a blank may be: no rule finds an error in it, and none a limit passed (a warning that names a limit). Give or take is left aside; a limit has to
 * be kept by the numbers as they stand.
 *
 * @param rules  the rules to judge by
 * @param limits <i>my limits</i>
 */
public record Judge(Rules rules, Limits limits) {
    /** What stands first against a blank; empty when it may be. */
    public Optional<Bound> against(Blank blank) {
        return against(Assessor.outline(blank));
    }

    /** The same for a blank that was assessed already. */
    public Optional<Bound> against(Assessment assessment) {
        return rules.judge(assessment, limits).stream().filter(Judge::stands).findFirst().map(f -> new Bound(f.rule(), f.text()));
    }

    private static boolean stands(Finding finding) {
        return finding.severity() == Severity.ERROR || finding.severity() == Severity.WARNING && finding.limit().isPresent();
    }
}
