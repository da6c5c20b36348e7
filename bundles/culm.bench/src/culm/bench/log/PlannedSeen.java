package culm.bench.log;

import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;

/**
 * What a design planned and what was measured on a blank tied from it; differences are measured minus planned.
 *
 * @param tied      the blank
 * @param tie       tie length, mm
 * @param wrapTop   top of the wrap, mm
 * @param finished  finished length, mm
 * @param turns     turns left, against the plan
 * @param turnsHere turns left, against what the model expects with the lengths that were measured
 */
public record PlannedSeen(Tied tied, OptionalDouble tie, OptionalDouble wrapTop, OptionalDouble finished, OptionalDouble turns, OptionalDouble turnsHere) {

    /** Compares one blank with its design. */
    public static PlannedSeen of(Tied tied, Blank design) {
        return new PlannedSeen(tied, less(tied.seen().tie(), design.value(Inputs.TIE_LENGTH)), less(tied.seen().wrapTop(), design.value(Inputs.WRAP_TOP)),
                less(tied.seen().finished(), design.value(Inputs.FINISHED)), less(tied.seen().turns(), turns(design)),
                less(tied.seen().turns(), turns(asTied(design, tied))));
    }

    /** The design with the lengths that were measured on the blank in place of the planned ones. */
    public static Blank asTied(Blank design, Tied tied) {
        Blank blank = design;
        double below = design.number(Inputs.STAPLE_LENGTH) - design.number(Inputs.WRAP_TOP);
        if (tied.seen().stapleLength().isPresent()) {
            double length = tied.seen().stapleLength().getAsDouble();
            blank = blank.with(Inputs.STAPLE_LENGTH, length).with(Inputs.WRAP_TOP, length - below);
        }
        if (tied.seen().tie().isPresent()) {
            blank = blank.with(Inputs.TIE_LENGTH, tied.seen().tie().getAsDouble());
        }
        return tied.seen().wrapTop().isPresent() ? blank.with(Inputs.WRAP_TOP, tied.seen().wrapTop().getAsDouble()) : blank;
    }

    /** Turns left that the model expects; empty when the sides never close or it cannot be computed. */
    public static OptionalDouble turns(Blank blank) {
        OptionalDouble closes = ClosingFinder.find(blank, Math.abs(blank.number(Inputs.CROOKED))).at();
        return closes.isEmpty() ? closes : OptionalDouble.of((blank.number(Inputs.WRAP_TOP) - closes.getAsDouble()) / blank.number(Inputs.THREAD_PITCH));
    }

    private static OptionalDouble less(OptionalDouble seen, OptionalDouble planned) {
        return seen.isPresent() && planned.isPresent() ? OptionalDouble.of(seen.getAsDouble() - planned.getAsDouble()) : OptionalDouble.empty();
    }
}
