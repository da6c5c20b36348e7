package culm.blank.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Cut;
import culm.blank.Fit;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.Sample;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.StapleType;

/** Every rule that ships: when it speaks, how bad, against which number, and that its fix cures what it found. Trade facts: common practice, no source. */
class RulesTest {
    private static final Rules RULES = Rules.load();
    private static final Limits LIMITS = Limits.STANDARD;
    /** Everything measured, and nothing to give or take: closes with 1.1 turns left. */
    private static final Blank SURE = sure(Sample.blank());

    private static Blank sure(Blank blank) {
        var edit = blank.edit();
        blank.inputs().forEach(i -> edit.tolerance(i.path(), 0, true));
        return edit.build();
    }

    private static List<Finding> judged(Blank blank) {
        return RULES.judge(Assessor.assess(blank), LIMITS);
    }

    private static Optional<Finding> found(Blank blank, String rule) {
        return judged(blank).stream().filter(f -> f.rule().equals(rule)).findFirst();
    }

    private static void assertFound(Blank blank, String rule, Severity severity, double value, double limit) {
        Finding f = found(blank, rule).orElseThrow(() -> new AssertionError(rule + " said nothing"));
        assertEquals(severity, f.severity(), f.text());
        assertEquals(value, f.value().orElseThrow(), 1e-3, f.text());
        assertEquals(limit, f.limit().orElseThrow(), 1e-9, f.text());
        assertFalse(f.text().isBlank() || f.why().isBlank() || f.remedy().isBlank());
    }

    private static void assertCured(Blank blank, String rule) {
        Fix fix = found(blank, rule).orElseThrow().fix().orElseThrow(() -> new AssertionError(rule + " offered no fix"));
        Optional<Finding> after = found(blank.with(fix.path(), fix.value()), rule);
        assertTrue(after.isEmpty() || after.get().severity() == Severity.FINE, () -> fix + " leaves " + after.get().text());
    }

    @Test
    void aBlankThatFits() {
        List<Finding> all = judged(SURE);
        assertTrue(all.stream().allMatch(f -> f.severity() == Severity.FINE), all::toString);
        assertEquals(List.of("turnsLeft", "tiePerTurn"), all.stream().map(Finding::rule).toList());
        Verdict verdict = Verdict.of(Assessor.assess(SURE), all);
        assertEquals(new Verdict(Verdict.Sign.FITS, "sides close with 1.1 turns left, give or take 0.0"), verdict);
    }

    @Test
    void overwrapped() {
        Blank high = SURE.with(Inputs.WRAP_TOP, 47.3);
        assertFound(high, "overwrapped", Severity.ERROR, 47.3, 47);
        assertCured(high, "overwrapped");
        Blank doubtful = Sample.blank().edit().set(Inputs.WRAP_TOP, 46.9).tolerance(Inputs.WRAP_TOP, 0.2, true).build();
        assertEquals(Severity.ADVICE, found(doubtful, "overwrapped").orElseThrow().severity());
        assertEquals(Verdict.Sign.DOES_NOT, Verdict.of(Assessor.assess(high), judged(high)).sign());
    }

    @Test
    void sidesThatDoNotCloseUnderTheWrap() {
        Blank late = SURE.with(Inputs.TIE_LENGTH, 73.5);
        double closes = Assessor.assess(late).sidesCloseAt().getAsDouble();
        assertTrue(closes > 46.5);
        assertFound(late, "sidesOpen", Severity.ERROR, closes, 46.5);
        assertCured(late, "sidesOpen");
        Blank never = SURE.edit().cut(new Cut(WidthMeasure.CHORD, EdgeKind.RADIAL, true, true)).build();
        assertFound(never, "sidesOpen", Severity.ERROR, 0.4366, 0);
        assertTrue(Verdict.of(Assessor.assess(never), judged(never)).sentence().startsWith("sides never close: open by 0.44 mm at the staple's top"));
    }

    @Test
    void turnsOutsideMyLimits() {
        Blank low = SURE.with(Inputs.TIE_LENGTH, 70.5);
        double turns = Assessor.assess(low).turnsLeft().getAsDouble();
        assertTrue(turns > 2);
        assertFound(low, "turnsLeft", Severity.WARNING, turns, 2);
        assertCured(low, "turnsLeft");
        Finding few = RULES.judge(Assessor.assess(SURE), LIMITS.with(Limits.TURNS_FEWEST, 1.5).with(Limits.TURNS_WANTED, 1.8)).get(0);
        assertEquals("turnsLeft", few.rule());
        assertEquals(Severity.ERROR, few.severity());
        assertEquals(1.5, few.limit().orElseThrow());
    }

    /** No green light without its give or take: the same blank, its numbers less sure. */
    @Test
    void aGiveOrTakeThatReachesTheLimitsIsAWarning() {
        Blank unsure = SURE.edit().tolerance(Inputs.TIE_LENGTH, 1.5, true).build();
        Finding f = found(unsure, "turnsLeft").orElseThrow();
        assertEquals(Severity.WARNING, f.severity());
        assertTrue(f.text().contains("give or take of 1."), f.text());
        assertEquals(Verdict.Sign.MAY_FIT, Verdict.of(Assessor.assess(unsure), judged(unsure)).sign());
    }

    @Test
    void pinchedTooMuch() {
        Blank wide = SURE.with(Inputs.DELTA, 0.14);
        double pinched = Assessor.assess(wide).pinchedAtTop().getAsDouble();
        assertTrue(pinched > 0.4);
        assertFound(wide, "pinched", Severity.WARNING, pinched, 0.4);
        found(wide, "pinched").orElseThrow().fix().ifPresent(fix -> assertCured(wide, "pinched"));
        assertTrue(found(SURE, "pinched").isEmpty());
    }

    @Test
    void theEndOfTheCane() {
        assertFound(SURE.with(Inputs.CORK_TOP, 36), "endOfCane", Severity.ERROR, 35, 36);
        assertFound(SURE.edit().set(Inputs.WRAP_BOTTOM, 36).build(), "endOfCane", Severity.ERROR, 35, 36);
        assertFound(SURE.with(Inputs.WRAP_TOP, 34), "endOfCane", Severity.ERROR, 35, 34);
    }

    @Test
    void theFinishedLength() {
        assertFound(SURE.with(Inputs.FINISHED, 46), "finishedLength", Severity.ERROR, 46, 47);
        assertFound(SURE.with(Inputs.FINISHED, 72.5), "finishedLength", Severity.ERROR, 72.5, 72);
        assertTrue(found(SURE.with(Inputs.FINISHED, 70), "finishedLength").isEmpty());
    }

    @Test
    void crookedIsToldForBothSides() {
        Finding f = found(SURE.with(Inputs.CROOKED, 0.05), "crooked").orElseThrow();
        assertEquals(Severity.WARNING, f.severity());
        assertEquals("Crooked by 0.05 mm: the left side closes at 46.4 mm, the right side at 45.7 mm.", f.text());
    }

    @Test
    void aTopThatIsWiderAcrossItsNarrowAxisIsTold() {
        Blank turned = SURE.edit().set("staple.topWide", 2.09).set("staple.topNarrow", 3.38).build();
        Finding f = found(turned, "changedOver").orElseThrow();
        assertEquals(Severity.WARNING, f.severity());
        assertEquals("The top's wide axis, 2.09 mm, is smaller than its narrow one, 3.38 mm: the two are probably changed over.", f.text());
        assertEquals("staple.topWide", f.path());
        assertTrue(found(SURE.edit().set("staple.topWide", 3).set("staple.topNarrow", 3).build(), "changedOver").isEmpty(), "a round top has none");
        Profile<StapleType> places = new Profile<>(new MeasuredStaple(), Values.NONE.with(MeasuredStaple.PLACES, Table.of(new double[] {0, 5.4, 5.4}, new double[] {47, 2.0, 3.4})));
        assertEquals("staple.places[1].wide", found(SURE.edit().staple(places).build(), "changedOver").orElseThrow().path());
    }

    @Test
    void whatCountsWasAssumed() {
        Finding f = found(Sample.blank().edit().clear(Inputs.COMPRESSION).build(), "assumed").orElseThrow();
        assertEquals(Severity.ADVICE, f.severity());
        assertTrue(f.text().startsWith("Assumed, not measured: "), f.text());
        Blank fitted = Sample.blank().edit().fit(Fit.to(Sample.blank(), 1.2, 0.5)).build();
        assertTrue(found(fitted, "assumed").isEmpty());
        assertTrue(Verdict.of(Assessor.assess(fitted), judged(fitted)).sentence().endsWith(", from a blank that worked"));
    }

    /** What belongs to the turns stands behind them, and nothing else between. */
    @Test
    void theVerdictTellsTheTurnsThenWhatIsWrongThenThatTheSidesMayNotClose() {
        Blank unsure = Sample.blank().edit().fit(Fit.to(Sample.blank(), 1.2, 0.5)).set(Inputs.WRAP_TOP, 47.3).set(Inputs.TIE_LENGTH, 71.5)
                .tolerance(Inputs.TIE_LENGTH, 4, true).build();
        Assessment a = Assessor.assess(unsure);
        assertTrue(a.turnsBand().orElseThrow().open());
        String sentence = Verdict.of(a, judged(unsure)).sentence();
        assertTrue(sentence.matches("sides close with \\d+\\.\\d turns left, give or take \\d+\\.\\d, from a blank that worked; but overwrapped: .*; they may not close at all"), sentence);
        Blank never = unsure.with(Inputs.TIE_LENGTH, 76);
        assertTrue(Assessor.assess(never).turnsLeft().isEmpty());
        String open = Verdict.of(Assessor.assess(never), judged(never)).sentence();
        assertTrue(open.matches("sides never close: open by \\d\\.\\d\\d mm at the staple's top, give or take \\d\\.\\d\\d mm, within which they may close; also overwrapped: .*"), open);
        Blank sure = Sample.blank().edit().set(Inputs.TIE_LENGTH, 79).build();
        assertTrue(Assessor.assess(sure).openAtStapleTopBand().orElseThrow().low() > 0);
        assertFalse(Verdict.of(Assessor.assess(sure), judged(sure)).sentence().contains("may close"));
    }

    @Test
    void whatCannotBeComputedIsSaid() {
        Finding f = found(SURE.with(Inputs.TUBE, 7), "notComputed").orElseThrow();
        assertEquals(Severity.ERROR, f.severity());
        assertEquals("where the sides close cannot be told", Verdict.of(Assessor.assess(SURE.with(Inputs.TUBE, 7)), List.of()).sentence());
    }

    @Test
    void tieLengthForOneTurn() {
        Finding f = found(SURE, "tiePerTurn").orElseThrow();
        double per = f.value().orElseThrow();
        double turns = Assessor.assess(SURE).turnsLeft().getAsDouble();
        assertEquals(turns + 1, Assessor.assess(SURE.with(Inputs.TIE_LENGTH, 72 - per)).turnsLeft().orElseThrow(), 0.05);
        assertEquals("To move the closing by one turn, change the tie length by 0.9 mm: shorter closes sooner.", f.text());
    }

    /** A wrap 0.5 below the top of a 47 staple and a tie of 72 close about one turn under the wrap, with the example's parts. */
    @Test
    void theExamplePartsCloseAboutOneTurnUnderTheWrap() {
        assertEquals(1.1, Assessor.assess(SURE).turnsLeft().orElseThrow(), 0.05);
    }

    @Test
    void theWorstComesFirstAndARuleThatFailsIsAFinding() {
        Rule broken = new Rule() {
            @Override
            public String id() {
                return "broken";
            }

            @Override
            public String name() {
                return "a rule that breaks";
            }

            @Override
            public List<Finding> judge(Assessment assessment, Limits limits) {
                throw new IllegalStateException("no luck");
            }
        };
        List<Finding> all = new Rules(List.of(new TiePerTurn(), broken, new Overwrapped())).judge(Assessor.assess(SURE.with(Inputs.WRAP_TOP, 47.3)), LIMITS);
        assertEquals(List.of("overwrapped", "broken", "tiePerTurn"), all.stream().map(Finding::rule).toList());
        assertTrue(all.get(1).text().contains("a rule that breaks"), all.get(1).text());
    }
}
