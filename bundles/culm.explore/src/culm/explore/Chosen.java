package culm.explore;

import java.util.List;

import culm.blank.Blank;

/**
 * The best choice that was found, and what it is worth. Baseline and choice are compared on the same fresh draws, none of which was used in the search.
 *
 * @param values   the value of each free input, for parts the index
 * @param texts    the same in words
 * @param blank    the blank with these values
 * @param baseline share of the base
 * @param best     share of the choice
 * @param gain     share of the choice minus that of the base
 * @param gainLow  95 % interval of the gain: Newcombe's score interval for paired shares (R. G. Newcombe, Statist. Med. 17 (1998) 2635-2650, method 10)
 * @param gainHigh its upper end
 * @param every    whether every combination was tried, so that nothing better is to be had up to chance
 * @param tried    how many combinations were tried
 * @param partial  whether the search was cancelled
 */
public record Chosen(List<Double> values, List<String> texts, Blank blank, ToleranceResult baseline, ToleranceResult best, double gain, double gainLow,
        double gainHigh, boolean every, long tried, boolean partial) {

    /** Whether the gain is more than chance. */
    public boolean certain() {
        return gainLow > 0;
    }
}
