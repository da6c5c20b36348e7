package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import culm.blank.chance.Draws;

/** The band against draws of the full closing: every input moved, the blank built anew, the sides closed by the reference path. */
class GiveOrTakeTest {
    private static final boolean LONG = Boolean.getBoolean("culm.long");
    private static final int DESIGNS = LONG ? 50 : 16;
    private static final int DRAWS = LONG ? 100_000 : 1000;
    /** Ends of the band against those of the draws, in half-widths; the short run has a sampling error of its own. */
    private static final double NEAR = LONG ? 0.05 : 0.2;
    private static final double A_TENTH = 0.1;
    private static final double SAMPLING = LONG ? 0.02 : 0.15;

    @Test
    void bandsHoldAgainstPropagatedDraws() {
        List<Blank> designs = designs();
        double worst = 0;
        double all = 0;
        int propagated = 0;
        double firstOrderOff = 0;
        for (Blank blank : designs) {
            Assessment a = Assessor.assess(blank);
            Band band = a.closeBand().orElseThrow();
            double[] heights = draws(blank);
            double low = heights[(int) Math.ceil(0.025 * DRAWS) - 1];
            double high = heights[DRAWS - (int) Math.ceil(0.025 * DRAWS)];
            double never = Arrays.stream(heights).filter(Double::isInfinite).count() / (double) DRAWS;
            double top = blank.number(Inputs.STAPLE_LENGTH);
            double half = Double.isInfinite(high) ? a.sidesCloseAt().getAsDouble() - low : (high - low) / 2;
            double off = Math.max(Math.abs(band.low() - low), Math.abs(band.high() - Math.min(top, high))) / half;
            assertTrue(off <= (band.propagated() ? NEAR : A_TENTH + SAMPLING), "band " + band + " against " + low + " to " + high + " of " + DRAWS + " draws");
            assertEquals(never, band.never(), 0.01 + 3 * Math.sqrt(never * (1 - never) / DRAWS), "share that never closes");
            worst = Math.max(worst, off);
            all += off;
            propagated += band.propagated() ? 1 : 0;
            firstOrderOff = Math.max(firstOrderOff, band.propagated() ? 0 : off);
        }
        System.out.printf("%d designs, %d draws each: an end of the band is off by %.3f of its half-width at most, %.3f on average; %d bands propagated; worst first-order band %.3f%n",
                designs.size(), DRAWS, worst, all / designs.size(), propagated, firstOrderOff);
    }

    /** Designs that close on the overlap, some close to the top, and every fifth fitted to a blank that worked and then changed. */
    private static List<Blank> designs() {
        List<Blank> found = new ArrayList<>();
        for (long number = 0; found.size() < DESIGNS; number += 37) {
            Blank blank = Designs.number(number).edit().set(Inputs.DELTA, 0).build();
            Closing closing = ClosingFinder.find(blank);
            if (closing.at().isEmpty() || closing.closedEverywhere()) {
                continue;
            }
            if (found.size() % 5 == 4) {
                double turns = (blank.number(Inputs.WRAP_TOP) - closing.at().getAsDouble()) / blank.number(Inputs.THREAD_PITCH);
                blank = blank.edit().fit(Fit.to(blank, turns - 0.4, Fit.HALF_A_TURN)).build().with(Inputs.TIE_LENGTH, blank.number(Inputs.TIE_LENGTH) - 0.7);
            }
            found.add(blank);
        }
        return found;
    }

    /** Closings of the moved blanks, sorted; positive infinity where the sides never close. */
    private static double[] draws(Blank blank) {
        Draws random = new Draws(96);
        Spread spread = new Spread(blank, 1, Optional.empty());
        List<Input> inputs = blank.inputs().stream().filter(i -> spread.names().contains(i.path())).toList();
        return IntStream.range(0, DRAWS).parallel().mapToDouble(i -> {
            BlankBuilder edit = blank.edit();
            for (int k = 0; k < inputs.size(); k++) {
                Input input = inputs.get(k);
                double t = input.tolerance().plusMinus();
                double value = input.value() + t * (2 * random.uniform(i, k) - 1);
                edit.set(input.path(), Math.min(input.parameter().max(), Math.max(input.parameter().min(), value)));
            }
            blank.fit().ifPresent(fit -> edit.set(Inputs.DELTA, delta(fit, blank, inputs, random, i)));
            Closing closing = ClosingFinder.find(edit.build());
            assertTrue(closing.problem().isEmpty(), () -> closing.problem().get());
            return closing.at().orElse(Double.POSITIVE_INFINITY);
        }).sorted().toArray();
    }

    /** The length that would have been fitted had the inputs that both blanks share been as they are drawn, the others and the reading drawn too. */
    private static double delta(Fit fit, Blank blank, List<Input> inputs, Draws random, int i) {
        Blank worked = fit.worked();
        BlankBuilder edit = worked.edit();
        for (int k = 0; k < inputs.size(); k++) {
            Input input = inputs.get(k);
            boolean same = worked.value(input.path()).equals(blank.value(input.path()));
            double u = random.uniform(i, same ? k : 1000 + k);
            double value = worked.value(input.path()).getAsDouble() + input.tolerance().plusMinus() * (2 * u - 1);
            edit.set(input.path(), Math.min(input.parameter().max(), Math.max(input.parameter().min(), value)));
        }
        Blank moved = edit.build();
        double turns = fit.turnsLeft() + fit.readingError() * (2 * random.uniform(i, 2000) - 1);
        return new Seam(moved).open(Fit.seen(moved, turns)) / 2;
    }

    @Test
    void theBandIsTheSameEveryTime() {
        Blank blank = Designs.number(74);
        assertEquals(Assessor.assess(blank).turnsBand(), Assessor.assess(blank.edit().build()).turnsBand());
    }

    /** One uniform input alone: the draws know that 95 % of a uniform distribution are not 1.96 u, and are used. */
    @Test
    void aSingleInputIsPropagated() {
        Blank sure = withoutGiveOrTake(Sample.blank());
        Band none = Assessor.assess(sure).closeBand().orElseThrow();
        assertEquals(0, none.half(), 1e-12);
        Band one = Assessor.assess(sure.edit().tolerance(Inputs.TIE_LENGTH, 0.3, true).build()).closeBand().orElseThrow();
        double low = ClosingFinder.find(sure.with(Inputs.TIE_LENGTH, 72 - 0.95 * 0.3)).at().getAsDouble();
        double high = ClosingFinder.find(sure.with(Inputs.TIE_LENGTH, 72 + 0.95 * 0.3)).at().getAsDouble();
        assertTrue(one.propagated());
        assertEquals(low, one.low(), 1e-3);
        assertEquals(high, one.high(), 1e-3);
        assertFalse(one.open());
    }

    static Blank withoutGiveOrTake(Blank blank) {
        BlankBuilder edit = blank.edit();
        blank.inputs().forEach(i -> edit.tolerance(i.path(), 0, true));
        return edit.build();
    }

    /** With a fit and nothing changed, only the reading counts: half a turn, uniform. */
    @Test
    void theSameBlankAgainIsAsSureAsTheReading() {
        Blank worked = Sample.blank();
        Blank fitted = worked.edit().fit(Fit.to(worked, 1.3, 0.5)).build();
        Band band = Assessor.assess(fitted).turnsBand().orElseThrow();
        assertEquals(1.3, Assessor.assess(fitted).turnsLeft().orElseThrow(), 1e-9);
        assertEquals(1.3 - 0.95 * 0.5, band.low(), 2e-3);
        assertEquals(1.3 + 0.95 * 0.5, band.high(), 2e-3);
        Band changed = Assessor.assess(fitted.with(Inputs.TIE_LENGTH, 71)).turnsBand().orElseThrow();
        assertTrue(changed.half() > band.half() && changed.half() < Assessor.assess(worked).turnsBand().orElseThrow().half());
    }

    /** What is kept of one blank that worked is not used for another one. */
    @Test
    void twoBlanksThatWorkedAreNotMixedUp() {
        Blank first = Sample.blank();
        Blank second = first.edit().tolerance(Inputs.TIE_LENGTH, 0.9, true).build().with(Inputs.TIE_LENGTH, 71.6);
        Blank one = first.edit().fit(Fit.to(first, 1.3, 0.5)).build().with(Inputs.TIE_LENGTH, 71.2);
        Blank other = first.edit().fit(Fit.to(second, 1.3, 0.5)).build().with(Inputs.TIE_LENGTH, 71.2);
        Band alone = Assessor.assess(one).turnsBand().orElseThrow();
        Band another = Assessor.assess(other).turnsBand().orElseThrow();
        assertEquals(alone, Assessor.assess(one).turnsBand().orElseThrow());
        assertEquals(another, Assessor.assess(other).turnsBand().orElseThrow());
        assertTrue(another.half() > alone.half() + 0.1, another + " " + alone);
    }

    /** What a blank has kept for one reading of its turns is not used for another reading. */
    @Test
    void twoReadingsOfOneBlankAreNotMixedUp() {
        Fit low = Fit.to(Sample.blank(), 0.5, 0.5);
        Fit high = Fit.to(Sample.blank(), 4, 1);
        Band alone = Assessor.assess(Sample.blank().edit().fit(high).build().with(Inputs.TIE_LENGTH, 71.2)).turnsBand().orElseThrow();
        Fit same = new Fit(low.worked(), high.turnsLeft(), high.readingError(), high.delta());
        Assessor.assess(Sample.blank().edit().fit(low).build().with(Inputs.TIE_LENGTH, 71.2));
        assertEquals(alone, Assessor.assess(Sample.blank().edit().fit(same).build().with(Inputs.TIE_LENGTH, 71.2)).turnsBand().orElseThrow());
    }
}
