package culm.explore;

import java.util.List;

/**
 * What a tolerance run found.
 *
 * @param wanted    blanks asked for
 * @param blanks    blanks done; the first ones, so a run of that many with this seed gives the same
 * @param seed      seed
 * @param passed    blanks that pass every rule
 * @param rules     each rule
 * @param causes    inputs behind failures of any rule, the strongest first
 * @param turns     turns left; blanks that never close count as lowest
 * @param closes    where the sides close, mm; blanks that never close count as lowest, although they would close higher, if anywhere
 * @param never     blanks that never close
 * @param refused   blanks that cannot be computed
 * @param reference blanks closed by the reference path, because a part has no quick way or its closing was not proven by it
 * @param slowRules ids of the rules that had to be handed an assessment of every blank
 */
public record ToleranceResult(long wanted, long blanks, long seed, Share passed, List<RuleShare> rules, List<Cause> causes, Distribution turns,
        Distribution closes, long never, long refused, long reference, List<String> slowRules) {

    /** Whether it was cancelled before the end. */
    public boolean partial() {
        return blanks < wanted;
    }
}
