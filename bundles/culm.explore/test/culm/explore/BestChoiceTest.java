package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.explore.internal.run.Paired;

class BestChoiceTest {
    private static final Study LONG_TIE = new Study(Designs.example().with(Inputs.TIE_LENGTH, 73.5), Designs.nine(), Limits.STANDARD, Rules.load());

    @Test
    void fewCombinationsAreAllTried() {
        Axis ties = Axis.Numbers.stepped(Inputs.TIE_LENGTH, "tie length", 70, 75, 0.5);
        Chosen chosen = BestChoice.search(LONG_TIE, List.of(Free.among(ties)), 5, 2, Watcher.none());
        assertTrue(chosen.every() && chosen.certain(), chosen.texts().toString());
        assertEquals(11, chosen.tried());
        double best = 0;
        for (double tie : ((Axis.Numbers) ties).values()) {
            best = Math.max(best, ToleranceRun.run(LONG_TIE.about(LONG_TIE.base().with(Inputs.TIE_LENGTH, tie)), 20_000, 99, 2, Watcher.none()).passed().value());
        }
        assertEquals(best, chosen.best().passed().value(), 0.015);
        assertEquals(chosen.gain(), chosen.best().passed().value() - chosen.baseline().passed().value());
        assertTrue(chosen.gainLow() < chosen.gain() && chosen.gain() < chosen.gainHigh());
    }

    @Test
    void manyAreSearched() {
        List<Free> free = List.of(Free.between(Inputs.TIE_LENGTH, "tie length", 70.5, 75), Free.between(Inputs.WRAP_TOP, "top of the wrap", 45.5, 46.9));
        Chosen searched = BestChoice.search(LONG_TIE, free, 5, 2, Watcher.none());
        Chosen tried = BestChoice.search(LONG_TIE, List.of(Free.among(Axis.Numbers.spaced(Inputs.TIE_LENGTH, "", 70.5, 75, 10)),
                Free.among(Axis.Numbers.spaced(Inputs.WRAP_TOP, "", 45.5, 46.9, 8))), 5, 2, Watcher.none());
        assertTrue(!searched.every());
        assertTrue(searched.best().passed().value() > tried.best().passed().value() - 0.01, searched.best().passed() + " against " + tried.best().passed());
    }

    /** Newcombe 1998, table II, method 10: 36 both, 12 and 2, 0 neither, of 50: difference 0.2, interval 0.0569 to 0.3404; from memory. */
    @Test
    void pairedIntervalsAreNewcombes() {
        double[] interval = Paired.interval(new long[] {36, 12, 2, 0});
        assertEquals(0.0569, interval[0], 5e-4);
        assertEquals(0.3404, interval[1], 5e-4);
    }
}
