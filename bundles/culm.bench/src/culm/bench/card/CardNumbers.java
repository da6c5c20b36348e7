package culm.bench.card;

import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;

/**
 * The numbers of a card, all computed from one assessment; lengths mm.
 *
 * @param stapleLength  length of the staple
 * @param pencilMark    cane above the staple, from the fold
 * @param tie           tie length
 * @param tieTolerance  its give or take
 * @param caneEnd       end of the cane, from the bottom of the staple
 * @param corkTop       top of the cork, where there is one
 * @param wrapBottom    where the thread ends below, where that is known
 * @param start         where the thread starts, from the bottom
 * @param startTurns    how many turns that is below the top of the wrap
 * @param closes        where the sides close; empty when they never do
 * @param turnsLeft     turns left then
 * @param giveOrTake    95 % give or take of the turns
 * @param fewest        fewest turns allowed
 * @param most          most turns allowed
 * @param wanted        turns wanted
 * @param perTurn       how far to change the tie length to move the closing by one turn; positive: a shorter tie leaves more turns
 * @param wrapTop       top of the wrap
 * @param finished      finished length, where it is known
 * @param threadLength  thread without knots and tails
 */
public record CardNumbers(double stapleLength, double pencilMark, double tie, double tieTolerance, double caneEnd, OptionalDouble corkTop, OptionalDouble wrapBottom, double start,
        double startTurns, OptionalDouble closes, OptionalDouble turnsLeft, OptionalDouble giveOrTake, double fewest, double most, double wanted,
        OptionalDouble perTurn, double wrapTop, OptionalDouble finished, OptionalDouble threadLength) {

    /** Reads them off an assessment. */
    public static CardNumbers of(Assessment a, Limits limits) {
        Blank blank = a.blank();
        double wrapTop = blank.number(Inputs.WRAP_TOP);
        double turns = blank.number(Inputs.START_TURNS);
        Optional<Band> band = a.turnsBand();
        double finished = blank.number(Inputs.FINISHED);
        return new CardNumbers(blank.number(Inputs.STAPLE_LENGTH), a.caneAboveStaple(), blank.number(Inputs.TIE_LENGTH),
                blank.tolerance(Inputs.TIE_LENGTH).plusMinus(), a.heights().of(Mark.CANE_END).orElseThrow(), a.heights().of(Mark.CORK_TOP),
                a.heights().of(Mark.WRAP_BOTTOM),
                wrapTop - turns * blank.number(Inputs.THREAD_PITCH), turns, a.sidesCloseAt(), a.turnsLeft(),
                band.isPresent() ? OptionalDouble.of(band.get().half()) : OptionalDouble.empty(), limits.get(Limits.TURNS_FEWEST),
                limits.get(Limits.TURNS_MOST), limits.get(Limits.TURNS_WANTED), a.tieLengthPerTurn(), wrapTop,
                Double.isNaN(finished) ? OptionalDouble.empty() : OptionalDouble.of(finished),
                a.thread().isPresent() ? OptionalDouble.of(a.thread().get().length()) : OptionalDouble.empty());
    }
}
