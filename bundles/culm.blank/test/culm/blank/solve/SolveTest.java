package culm.blank.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Cut;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.Sample;
import culm.blank.Seam;
import culm.blank.TieForTurns;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.Say;
import culm.blank.rules.Severity;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;

class SolveTest {
    private static final Blank BLANK = Sample.blank();
    private static final Judge JUDGE = new Judge(Rules.load(), Limits.STANDARD);
    private static final Blank NEVER = BLANK.edit().cut(new Cut(WidthMeasure.CHORD, EdgeKind.RADIAL, true, true)).build();

    private static double turns(Blank blank) {
        return Assessor.outline(blank).turnsLeft().orElseThrow();
    }

    @Test
    void tieForTheTurnsWanted() {
        Answer answer = TieLengths.solve(BLANK, JUDGE);
        assertTrue(answer.no().isEmpty());
        assertEquals(1, turns(BLANK.with(Inputs.TIE_LENGTH, answer.nearest().orElseThrow())), 1e-9);
        assertEquals(1, answer.allowed().size());
        Allowed all = answer.allowed().get(0);
        assertEquals(2, turns(BLANK.with(Inputs.TIE_LENGTH, all.from())), 1e-5);
        assertEquals(0, turns(BLANK.with(Inputs.TIE_LENGTH, all.to())), 1e-5);
        assertEquals("turnsLeft", all.below().rule());
        assertEquals("sidesOpen", all.above().rule());
        assertTrue(all.above().text().contains("above the wrap"), all.above().text());
    }

    /** A rule of someone else's that forbids a stretch in the middle: two intervals, each bounded by the rule that does. */
    @Test
    void aRuleCutsTheIntervalInTwo() {
        List<Rule> rules = new ArrayList<>(JUDGE.rules().all());
        rules.add(new Rule() {
            @Override
            public String id() {
                return "jig";
            }

            @Override
            public String name() {
                return "what the tying jig can hold";
            }

            @Override
            public List<Finding> judge(Assessment a, Limits limits) {
                double tie = a.blank().number(Inputs.TIE_LENGTH);
                return tie > 71.6 && tie < 72.2 ? List.of(Finding.of(id(), Severity.ERROR, "The jig does not hold this tie.")) : List.of();
            }
        });
        Answer answer = TieLengths.solve(BLANK, new Judge(new Rules(rules), Limits.STANDARD));
        assertEquals(2, answer.allowed().size());
        assertEquals(71.6, answer.allowed().get(0).to(), 2e-6);
        assertEquals(72.2, answer.allowed().get(1).from(), 2e-6);
        assertEquals("jig", answer.allowed().get(0).above().rule());
        assertEquals("jig", answer.allowed().get(1).below().rule());
        assertEquals("sidesOpen", answer.allowed().get(1).above().rule());
        double exact = TieForTurns.find(BLANK, 1, 70, 75).get(0);
        assertTrue(exact > 71.6 && exact < 72.2, "the tie for one turn lies where the jig does not hold: " + exact);
        assertTrue(answer.exact().isEmpty());
        assertEquals("jig", answer.no().orElseThrow().rule());
        assertTrue(answer.no().get().text().endsWith("but: The jig does not hold this tie."), answer.no().get().text());
    }

    @Test
    void theHouseBounds() {
        Limits house = Limits.STANDARD.with(Limits.TIE_SHORTEST, 71.9).with(Limits.TIE_LONGEST, 72.3);
        Answer answer = TieLengths.solve(BLANK, new Judge(JUDGE.rules(), house));
        assertEquals(List.of(new Allowed(71.9, 72.3, new Bound("myLimits", "The house ties no shorter than 71.9 mm."),
                new Bound("myLimits", "The house ties no longer than 72.3 mm."))), answer.allowed());
    }

    @Test
    void noTieLengthIsAnAnswer() {
        Limits house = Limits.STANDARD.with(Limits.TIE_SHORTEST, 70).with(Limits.TIE_LONGEST, 75);
        Answer answer = TieLengths.solve(NEVER, new Judge(JUDGE.rules(), house));
        assertTrue(answer.allowed().isEmpty() && answer.exact().isEmpty());
        assertEquals("sidesOpen", answer.no().orElseThrow().rule());
        assertEquals("No tie from 70.0 mm to 75.0 mm leaves 1.0 turn: at 70.0 mm they stay open by " + openAtTop(70) + ", at 75.0 mm they stay open by "
                + openAtTop(75) + ".",
                answer.no().get().text());
    }

    private static String openAtTop(double tie) {
        return Say.fine(new Seam(NEVER.with(Inputs.TIE_LENGTH, tie)).open(47));
    }

    /** The solutions of a crooked blank count its worse side. */
    @Test
    void aCrookedBlank() {
        Blank crooked = BLANK.with(Inputs.CROOKED, -0.05);
        double tie = TieLengths.solve(crooked, JUDGE).nearest().orElseThrow();
        Blank solved = crooked.with(Inputs.TIE_LENGTH, tie);
        assertEquals(1, turns(solved), 1e-9);
        assertTrue(Assessor.outline(solved).left().at().getAsDouble() < Assessor.outline(solved).right().at().getAsDouble());
    }

    @Test
    void topOfTheWrapForAStaple() {
        Answer answer = WrapTops.solve(BLANK, JUDGE);
        assertEquals(1, turns(BLANK.with(Inputs.WRAP_TOP, answer.nearest().orElseThrow())), 1e-9);
        Allowed all = answer.allowed().get(0);
        double closes = ClosingFinder.find(BLANK).at().getAsDouble();
        assertEquals(closes, all.from(), 2e-6);
        assertEquals(closes + 2 * 0.41, all.to(), 2e-6);
        Blank late = BLANK.with(Inputs.TIE_LENGTH, 73.6);
        Answer no = WrapTops.solve(late, JUDGE);
        assertTrue(no.exact().isEmpty());
        assertEquals("overwrapped", no.no().orElseThrow().rule());
        assertEquals(47, no.allowed().get(0).to(), 1e-9);
        assertEquals("overwrapped", no.allowed().get(0).above().rule());
        assertEquals("sidesOpen", WrapTops.solve(NEVER, JUDGE).no().orElseThrow().rule());
    }

    @Test
    void widthForAClosing() {
        WidthChange wider = WidthChange.forClosing(BLANK, 45.5);
        double added = wider.change().orElseThrow();
        assertTrue(added > 0);
        assertEquals(45.5, ClosingFinder.find(WidthChange.widened(BLANK, added)).at().orElseThrow(), 1e-9);
        WidthChange back = WidthChange.forClosing(WidthChange.widened(BLANK, added), ClosingFinder.find(BLANK).at().getAsDouble());
        assertEquals(-added, back.change().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), WidthChange.forClosing(BLANK, 47.5).change());
        assertEquals("The sides cannot close at 47.5 mm: the cane lies on the staple from 35.0 mm to 47.0 mm.",
                WidthChange.forClosing(BLANK, 47.5).no().orElseThrow().text());
        Bound far = WidthChange.forClosing(NEVER, 35.5).no().orElseThrow();
        assertEquals("shape", far.rule());
        assertTrue(WidthChange.forClosing(NEVER, 46.3).change().orElseThrow() > 0.2);
        Bound unread = WidthChange.forClosing(BLANK.with(Inputs.TUBE, 6), 46).no().orElseThrow();
        assertEquals("notComputed", unread.rule());
    }

    @Test
    void aStapleFromAList() {
        Profile<culm.geometry.staple.StapleType> oval = BLANK.staple();
        List<StapleChoice.Candidate> list = List.of(candidate("small", oval, 3.2, 1.9, 47), candidate("own", oval, 3.38, 2.09, 47),
                candidate("short", oval, 3.38, 2.09, 45.5), candidate("huge", oval, 4.6, 3.4, 47));
        List<StapleChoice> ranked = StapleChoice.rank(BLANK, list, JUDGE);
        assertEquals(List.of("own", "short", "small", "huge"), ranked.stream().map(c -> c.candidate().name()).toList());
        assertTrue(ranked.get(0).against().isEmpty());
        StapleChoice small = ranked.get(2);
        assertFalse(small.against().isEmpty());
        assertEquals(1, turns(small.blank().with(Inputs.TIE_LENGTH, small.tie().orElseThrow())), 1e-9);
        StapleChoice shorter = ranked.get(1);
        assertEquals(45.0, shorter.blank().number(Inputs.WRAP_TOP), 1e-12);
        StapleChoice huge = ranked.get(3);
        assertTrue(huge.tie().isEmpty());
        assertFalse(huge.no().orElseThrow().text().isBlank());
        assertThrows(IllegalArgumentException.class, () -> new StapleChoice.Candidate("x", oval, Map.of("tie.length", 70.0)));
    }

    private static StapleChoice.Candidate candidate(String name, Profile<culm.geometry.staple.StapleType> oval, double wide, double narrow, double length) {
        return new StapleChoice.Candidate(name, oval.with(oval.values().with("topWide", wide).with("topNarrow", narrow)), Map.of(Inputs.STAPLE_LENGTH, length));
    }

    /** With more than one tie that leaves the turns wanted, all are told, the nearest first. */
    @Test
    void everyRootIsAnAnswer() {
        List<Double> roots = TieForTurns.find(BLANK, 1, 47, 84);
        for (double tie : roots) {
            assertEquals(1, turns(BLANK.with(Inputs.TIE_LENGTH, tie)), 1e-6);
        }
        assertTrue(roots.size() >= 1);
        assertTrue(TieForTurns.find(BLANK, -5, 47, 84).isEmpty(), "above the staple nothing closes");
        assertTrue(TieForTurns.find(NEVER, 1, 70, 75).isEmpty());
    }
}
