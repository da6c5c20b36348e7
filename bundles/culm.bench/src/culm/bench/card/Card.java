package culm.bench.card;

import java.util.List;

/**
 * What a card says.
 *
 * @param head        who, what and which parts
 * @param numbers     of the blank; on a card for several staples those of the staple in the middle
 * @param verdict     the one sentence of the report
 * @param works       false when an error was found: the card says so in place of looking ready
 * @param staples     on a card for several staples, each of them; empty on a card for one
 * @param wrapBelow   how far the wrap stops below each staple's own top, mm
 * @param measured    whether the staple's length was measured
 * @param example     on a card for several staples the one that the numbers and the strip are for
 */
public record Card(CardHead head, CardNumbers numbers, String verdict, boolean works, List<StapleLine> staples, double wrapBelow, boolean measured,
        String example) {
    public Card {
        staples = List.copyOf(staples);
    }

    /** Whether it is for more than one staple. */
    public boolean forSeveral() {
        return !staples.isEmpty();
    }

    /** Whether all its staples are tied to one length. */
    public boolean oneTie() {
        return staples.stream().mapToDouble(StapleLine::tie).distinct().count() <= 1;
    }

    /** Fewest turns left that are expected among its staples. */
    public double fewestTurns() {
        return staples.stream().mapToDouble(StapleLine::turnsLeft).min().orElseThrow();
    }

    /** Most turns left that are expected among its staples. */
    public double mostTurns() {
        return staples.stream().mapToDouble(StapleLine::turnsLeft).max().orElseThrow();
    }
}
