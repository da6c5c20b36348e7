package culm.blank.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Say;

/** The top of the wrap for a given staple: where the thread has to stop for the turns wanted, and wherever the rules allow it. */
public final class WrapTops {
    private static final double STEP = 0.25;
    private static final double LOWEST = 1;

    private WrapTops() {
    }

    /** Solves for the top of the wrap, everything else as it is, from the end of the cane to the staple's top. */
    public static Answer solve(Blank blank, Judge judge) {
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double from = Math.max(LOWEST, blank.number(Inputs.TIE_LENGTH) - blank.number(Inputs.FOLDED_LENGTH));
        double wanted = judge.limits().get(Limits.TURNS_WANTED);
        OptionalDouble closes = Assessor.outline(blank).sidesCloseAt();
        double exact = closes.isPresent() ? closes.getAsDouble() + wanted * blank.number(Inputs.THREAD_PITCH) : Double.NaN;
        Bound low = new Bound("endOfCane", "Lower down there is no cane under the thread.");
        Bound high = new Bound("overwrapped", "The thread must never pass the staple's top at " + Say.mm(top) + ".");
        List<Allowed> allowed = from < top ? new Stretches(wrap -> judge.against(blank.with(Inputs.WRAP_TOP, wrap))).between(from, top, STEP,
                Double.isNaN(exact) ? new double[0] : new double[] {exact}, low, high) : List.of();
        if (allowed.stream().anyMatch(a -> a.holds(exact))) {
            return new Answer(List.of(exact), allowed, Optional.empty());
        }
        return new Answer(List.of(), allowed, Optional.of(no(blank, judge, exact, wanted, top)));
    }

    private static Bound no(Blank blank, Judge judge, double exact, double wanted, double top) {
        if (exact > top) {
            return new Bound("overwrapped", Say.turns(wanted) + " above the closing is at " + Say.mm(exact) + ", above the staple's top at " + Say.mm(top) + ".");
        }
        if (Double.isNaN(exact) || exact < LOWEST) {
            return judge.against(blank).orElse(new Bound("sidesOpen", "The sides do not close, so no turns can be left."));
        }
        return judge.against(blank.with(Inputs.WRAP_TOP, exact)).orElse(new Bound("endOfCane", "There is no cane under the thread at " + Say.mm(exact) + "."));
    }
}
