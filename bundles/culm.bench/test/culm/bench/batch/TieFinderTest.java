package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.blank.solve.Allowed;
import culm.blank.solve.Judge;
import culm.blank.solve.TieLengths;
import culm.figures.Lengths;
import culm.geometry.words.Told;

class TieFinderTest {
    private final Limits limits = Limits.STANDARD;

    private static StapleReadings staple(SplittableRandom random) {
        return StapleReadings.of("s", 46.2 + 1.6 * random.nextDouble(), 3.2 + 0.4 * random.nextDouble(), 1.95 + 0.3 * random.nextDouble());
    }

    @Test
    void turnsAgreeWithTheReferencePath() {
        SplittableRandom random = new SplittableRandom(7);
        Blank design = Blanks.check();
        TieFinder finder = new TieFinder(design, limits, 0.1, 0, 48);
        int compared = 0;
        for (int i = 0; i < 60; i++) {
            Blank blank = StapleOnBlank.put(design, staple(random), Caliper.ASSUMED, 0.5);
            StapleTies ties = finder.find(blank);
            double tie = 70 + 5 * random.nextDouble();
            OptionalDouble closes = ClosingFinder.find(blank.with(Inputs.TIE_LENGTH, tie)).at();
            double turns = ties.turnsLeft().applyAsDouble(tie);
            double expected = closes.isEmpty() ? Double.NaN : (blank.number(Inputs.WRAP_TOP) - closes.getAsDouble()) / blank.number(Inputs.THREAD_PITCH);
            if (expected > limits.get(Limits.TURNS_MOST) + 1) {
                assertEquals(Double.POSITIVE_INFINITY, turns);
            } else {
                assertEquals(expected, turns, 1e-5);
                compared += closes.isPresent() ? 1 : 0;
            }
        }
        assertTrue(compared > 20, "compared only " + compared);
    }

    @Test
    void rangesAgreeWithSolvingOneBlank() {
        SplittableRandom random = new SplittableRandom(8);
        Blank design = Blanks.check();
        TieFinder finder = new TieFinder(design, limits, 0.1, 0, 48);
        Judge judge = new Judge(Rules.load(), limits);
        for (int i = 0; i < 4; i++) {
            Blank blank = StapleOnBlank.put(design, staple(random), Caliper.ASSUMED, 0.5);
            List<Allowed> allowed = TieLengths.solve(blank, judge).allowed().stream().filter(a -> a.to() > 67 && a.from() < 77).toList();
            List<TieRange> ranges = finder.find(blank).ranges();
            assertEquals(allowed.size(), ranges.size());
            for (int k = 0; k < ranges.size(); k++) {
                assertEquals(Math.max(67, allowed.get(k).from()), ranges.get(k).low(), 2e-4);
                assertEquals(Math.min(77, allowed.get(k).to()), ranges.get(k).high(), 2e-4);
            }
        }
    }

    @Test
    void theEndsOfARangeAreWhereALimitIsMet() {
        Blank design = Blanks.check();
        Blank blank = StapleOnBlank.put(design, StapleReadings.of("s", 47, 3.38, 2.09), Caliper.ASSUMED, 0.5);
        StapleTies ties = new TieFinder(design, limits, 0.1, 0, 47).find(blank);
        assertEquals(1, ties.ranges().size());
        TieRange range = ties.ranges().get(0);
        assertEquals(Bound.MOST_TURNS, range.below());
        assertEquals(Bound.FEWEST_TURNS, range.above());
        assertEquals(2, ties.turnsLeft().applyAsDouble(range.low()), 1e-3);
        assertEquals(0, ties.turnsLeft().applyAsDouble(range.high()), 1e-3);
        assertTrue(ties.allows(72));
        assertFalse(ties.allows(range.high() + 0.01));
        TieRange inner = new TieFinder(design, limits, 0.1, 0.5, 47).find(blank).ranges().get(0);
        assertEquals(1.5, ties.turnsLeft().applyAsDouble(inner.low()), 1e-3);
        assertEquals(0.5, ties.turnsLeft().applyAsDouble(inner.high()), 1e-3);
    }

    @Test
    void aGougeGivenTwiceTakesTheReferencePath() {
        Blank design = Blanks.check().edit().gougeEnd(Blanks.check().gouge()).build();
        StapleReadings staple = StapleReadings.of("s", 47, 3.38, 2.09);
        TieRange range = new TieFinder(design, limits, 0.25, 0, 47).find(StapleOnBlank.put(design, staple, Caliper.ASSUMED, 0.5)).ranges().get(0);
        TieRange same = new TieFinder(Blanks.check(), limits, 0.25, 0, 47).find(StapleOnBlank.put(Blanks.check(), staple, Caliper.ASSUMED, 0.5)).ranges().get(0);
        assertEquals(same.low(), range.low(), 2e-4);
        assertEquals(same.high(), range.high(), 2e-4);
    }

    @Test
    void aStapleThatFitsNowhereSaysWhy() {
        Blank design = Blanks.check();
        TieFinder finder = new TieFinder(design, limits, 0.1, 0, 47);
        String large = finder.find(StapleOnBlank.put(design, StapleReadings.of("s", 47, 3.9, 2.6), Caliper.ASSUMED, 0.5)).reason();
        String small = finder.find(StapleOnBlank.put(design, StapleReadings.of("s", 47, 2.9, 1.8), Caliper.ASSUMED, 0.5)).reason();
        String low = finder.find(StapleOnBlank.put(design.with(Inputs.CORK_TOP, 39), StapleReadings.of("s", 47, 3.38, 2.09), Caliper.ASSUMED, 0.5)).reason();
        assertTrue(large.contains("too large"), large);
        assertTrue(small.contains("too small"), small);
        assertTrue(low.contains("end of the cane"), low);
        String mm = Told.mm(large);
        assertTrue(mm.matches("Even tied at \\d\\d\\.\\d mm the sides stay open by 0\\.\\d\\d mm: a top of 3\\.90 x 2\\.60 mm is too large for this cane\\."), mm);
        String thou = Lengths.THOU.told(large);
        assertTrue(thou.matches("Even tied at \\d{4} thou the sides stay open by \\d+\\.\\d thou: a top of 153\\.5 x 102\\.4 thou is too large for this cane\\."), thou);
        for (String each : List.of(small, low)) {
            assertTrue(Told.mm(each).contains(" mm ") && !Lengths.THOU.told(each).contains("mm"), Lengths.THOU.told(each));
        }
    }
}
