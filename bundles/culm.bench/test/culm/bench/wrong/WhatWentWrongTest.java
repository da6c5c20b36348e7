package culm.bench.wrong;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Seen;
import culm.bench.log.Tied;
import culm.bench.log.TiedFrom;
import culm.bench.log.TiedHow;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Lengths;

class WhatWentWrongTest {
    private final Blank design = Makers.design();
    private final double planned = PlannedSeen.turns(design).getAsDouble();

    private static Tied seen(double tie, double wrapTop, double left, double right) {
        return new Tied("7", Optional.empty(), "Ines", "", TiedFrom.NOTHING, TiedHow.NOTHING, Seen.closing(tie, wrapTop, left, right), "", 0);
    }

    @Test
    void asPlannedIsSaidAndNothingIsBlamed() {
        Explanation e = WhatWentWrong.explain(design, seen(72.6, 46.5, planned + 0.2, planned - 0.1));
        assertEquals(Verdict.AS_PLANNED, e.verdict());
        assertEquals(Optional.empty(), e.first());
        assertTrue(e.sentences().get(0).startsWith("As planned: "), e.sentences().toString());
    }

    @Test
    void aTieThatWasMeasuredShortExplainsItself() {
        double turns = PlannedSeen.turns(design.with(Inputs.TIE_LENGTH, 71)).getAsDouble();
        Explanation e = WhatWentWrong.explain(design, seen(71, 46.5, turns, turns));
        assertEquals(Verdict.EXPLAINED, e.verdict());
        assertEquals("tie length", e.first().orElseThrow());
        assertEquals(turns - planned, e.known().get(0).turns(), 1e-9);
        assertEquals(List.of(), e.causes());
        String thou = Lengths.THOU.told(e.told().get(0));
        assertTrue(thou.contains("tie length 2795 thou, planned 2858 thou: that alone makes ") && !thou.contains("mm"), thou);
        assertTrue(e.sentences().get(0).contains("tie length 71.0 mm, planned 72.6 mm: that alone makes " + String.format("%.1f", turns - planned) + " turns more"), e.sentences().get(0));
    }

    @Test
    void oneSideOnlyPointsToCrookedNotToTheTie() {
        Explanation e = WhatWentWrong.explain(design, seen(72.6, 46.5, planned + 1.5, planned - 1.5));
        assertEquals(Verdict.CROOKED, e.verdict());
        assertTrue(e.sentences().get(0).contains("points to crooked cane") && e.sentences().get(0).contains("not to the tie length"), e.sentences().get(0));
        assertTrue(Lengths.THOU.told(e.told().get(0)).matches(".*crooked cane, by about \\d+\\.\\d thou, not to the tie length\\."), Lengths.THOU.told(e.told().get(0)));
        assertEquals("open on the right", e.crooked().orElseThrow().how());
        double sigma = Math.abs(e.crooked().get().off());
        Blank crooked = design.with(Inputs.CROOKED, sigma);
        double left = (46.5 - culm.blank.ClosingFinder.find(crooked, sigma).at().getAsDouble()) / 0.41;
        double right = (46.5 - culm.blank.ClosingFinder.find(crooked, -sigma).at().getAsDouble()) / 0.41;
        assertEquals(3, right - left, 0.15);
    }

    @Test
    void eachCauseExplainsWhatWasSeen() {
        Explanation e = WhatWentWrong.explain(design, seen(72.6, 46.5, planned + 2.2, planned + 2.2));
        assertEquals(Verdict.SOMETHING_ELSE, e.verdict());
        assertFalse(e.causes().isEmpty());
        double before = 0;
        for (Cause cause : e.causes()) {
            assertTrue(cause.units() >= before);
            before = cause.units();
        }
        Cause tie = e.causes().stream().filter(c -> c.id().equals("tie")).findFirst().orElseThrow();
        assertEquals(planned + 2.2, PlannedSeen.turns(design.with(Inputs.TIE_LENGTH, 72.6 + tie.off())).getAsDouble(), 1e-6);
        assertEquals("shorter", tie.how());
        Cause wrap = e.causes().stream().filter(c -> c.id().equals("wrapTop")).findFirst().orElseThrow();
        assertEquals(2.2 * 0.41, wrap.off(), 1e-6);
        assertEquals("higher", wrap.how());
        Cause swelling = e.causes().stream().filter(c -> c.id().equals("swelling")).findFirst().orElseThrow();
        assertEquals(planned + 2.2, PlannedSeen.turns(design.with(Inputs.SWELL_WIDTH, swelling.off())).getAsDouble(), 1e-6);
        assertEquals("Measure the cane's width 1024 thou from the fold, on a piece of the same batch.",
                Lengths.THOU.told(e.causes().stream().filter(c -> c.id().equals("width")).findFirst().orElseThrow().toldCheck()));
        String wrapInThou = Lengths.THOU.told(wrap.told());
        assertEquals("top of the wrap 0.90 mm higher than noted, 6.0 times its give or take of 0.15 mm", wrap.text());
        assertEquals("top of the wrap 35.5 thou higher than noted, 6.0 times its give or take of 5.9 thou", wrapInThou);
        assertTrue(e.told().stream().map(Lengths.THOU::told).noneMatch(s -> s.contains(" mm")), e.told().toString());
        assertTrue(e.equal() >= 2 && e.sentences().stream().anyMatch(s -> s.startsWith("About equally well")), e.sentences().toString());
    }

    @Test
    void whatWasNotNotedCannotBeExplained() {
        Tied tied = new Tied("7", Optional.empty(), "", "", TiedFrom.NOTHING, TiedHow.NOTHING, Seen.NOTHING, "", 0);
        Explanation e = WhatWentWrong.explain(design, tied);
        assertEquals(Verdict.CANNOT_TELL, e.verdict());
        assertEquals("It was not noted how many turns were left when the sides closed.", e.sentences().get(0));
        assertEquals(OptionalDouble.empty(), e.seen());
        assertEquals(Verdict.CANNOT_TELL, WhatWentWrong.explain(Blanks.check(), seen(120, 46.5, 1, 1)).verdict());
    }
}
