package culm.workbench.internal.explore;

import java.util.List;

import culm.bench.plots.PlotWords;
import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Widened;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Say;
import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;

/**
 * The verdict that a variant would have as a design, with its give or take: the one that stands under a design's name. It takes a whole assessment, so it is
 * told of variants that are looked at, not of all of them.
 *
 * @param design the design that is varied
 * @param rules  the rules to judge by
 * @param always what is said of every design
 */
record Judging(DesignedBlank design, Rules rules, List<Finding> always) {
    /**
     * A verdict in few words.
     *
     * @param sign how it stands
     * @param failed the rules that are failed, in words; may be empty
     * @param take the give or take behind the sign's word where none is
     */
    record Judged(Verdict.Sign sign, String failed, String take) {
        String words() {
            return sign.word() + (failed.isEmpty() ? take : ": " + failed);
        }

        /** Beside the sign: what its word says already is left out. */
        String brief() {
            return failed.isEmpty() ? words() : failed;
        }
    }

    /** The verdict on a variant. @param failed the rules that it fails by its numbers alone */
    Judged of(Blank blank, List<String> failed) {
        DesignedBlank variant = new DesignedBlank(design.name(), Widened.asCut(blank), design.limits(), design.places(), design.remarks());
        Assessment assessment = variant.assess();
        Verdict.Sign sign = Verdict.of(assessment, variant.judge(assessment, rules, always)).sign();
        String take = assessment.turnsBand().map(b -> ", give or take " + Say.tenth(b.half())).orElse("");
        return new Judged(sign, PlotWords.rules(failed), take);
    }
}
