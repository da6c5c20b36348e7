package culm.blank;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Every number of a blank, computed once by {@link Assessor}. Lengths mm from the bottom of the staple, volumes mm^3, turns as a count; empty
 * where a number cannot be computed, with the reason in {@link #troubles()}.
 *
 * @param blank             what was assessed
 * @param outline           whether only closing and marks were asked for, without give or take, sensitivities, thread and bore ({@link Assessor#outline(Blank)})
 * @param closing           the closing of the seam that closes last; both are alike unless the blank is crooked
 * @param left              closing of the left seam
 * @param right             closing of the right seam
 * @param closeBand         95 % band of {@code sidesCloseAt}
 * @param turnsLeft         (top of the wrap - closing) / pitch; negative when the sides close above the wrap
 * @param turnsBand         95 % band of {@code turnsLeft}
 * @param openAtStapleTop   how far the sides are open at the staple's top; negative when pinched
 * @param openAtStapleTopBand its 95 % band
 * @param openAtWrapTop     the same at the top of the wrap; empty when the wrap stops above the staple
 * @param tieLengthPerTurn  how far the tie length has to change to move the closing by one turn, mm; positive: a shorter tie closes lower and leaves more turns
 * @param caneOnStaple      length of cane on the staple
 * @param caneAboveStaple   tie length above the staple's top; 0 when one of both is no number, which the troubles tell
 * @param heights           the marks
 * @param thread            the thread's way
 * @param boreVolume        volume of the staple's bore
 * @param sensitivities     slopes of the closing, in the order of the bench; empty without a closing inside the overlap
 * @param troubles          what could not be computed and why
 */
public record Assessment(Blank blank, boolean outline, Closing closing, Closing left, Closing right, Optional<Band> closeBand, OptionalDouble turnsLeft,
        Optional<Band> turnsBand, OptionalDouble openAtStapleTop, Optional<Band> openAtStapleTopBand, OptionalDouble openAtWrapTop,
        OptionalDouble tieLengthPerTurn, OptionalDouble caneOnStaple, double caneAboveStaple, Heights heights, Optional<ThreadPath> thread,
        OptionalDouble boreVolume, List<Sensitivity> sensitivities, List<Trouble> troubles) {

    /** Lowest height from which the sides are closed up to the staple's top. */
    public OptionalDouble sidesCloseAt() {
        return closing.at();
    }

    /** How far the sides are pinched at the staple's top, mm, not negative. */
    public OptionalDouble pinchedAtTop() {
        return openAtStapleTop.isPresent() ? OptionalDouble.of(Math.max(0, -openAtStapleTop.getAsDouble())) : OptionalDouble.empty();
    }

    /** Whether the closing rests on a fit to a blank that worked. */
    public boolean fitted() {
        return blank.fit().isPresent();
    }
}
