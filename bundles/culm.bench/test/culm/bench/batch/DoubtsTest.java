package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import culm.figures.Lengths;

class DoubtsTest {
    private static List<Doubt> doubts(StapleReadings... more) {
        List<StapleReadings> staples = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            staples.add(StapleReadings.of("s" + i, 47 + 0.01 * (i % 3), 3.38 + 0.01 * (i % 2), 2.09));
        }
        staples.addAll(List.of(more));
        return Doubts.in(new StapleBatch("b", staples, new Caliper(0.02), 0.5));
    }

    @Test
    void equalStaplesRaiseNone() {
        assertEquals(List.of(), doubts());
        assertEquals(List.of(), doubts(StapleReadings.of("x", 47.03, 3.40, 2.10)));
    }

    @Test
    void slipsAreNamed() {
        List<Doubt> far = doubts(StapleReadings.of("x", 46.01, 3.38, 2.09));
        assertEquals(1, far.size());
        assertEquals(Dimension.LENGTH, far.get(0).dimension());
        assertTrue(far.get(0).why().contains("1.00 mm less") && far.get(0).why().contains("whole millimetres"), far.get(0).why());
        assertTrue(doubts(StapleReadings.of("x", 47, 3.38, 20.9)).stream().anyMatch(d -> d.why().contains("point in the wrong place")));
        assertTrue(doubts(StapleReadings.of("x", 47, 2.09, 3.38)).stream().anyMatch(d -> d.why().contains("changed over")));
    }

    @Test
    void ofAStapleThatWasSetAsideNothingIsAsked() {
        StapleReadings slip = StapleReadings.of("x", 46.01, 3.38, 2.09);
        StapleReadings aside = new StapleReadings("x", slip.lengths(), slip.wides(), slip.narrows(), "dented", "");
        assertEquals(1, doubts(slip).size());
        assertEquals(List.of(), doubts(aside));
        assertEquals(List.of("y"), doubts(aside, StapleReadings.of("y", 46.01, 3.38, 2.09)).stream().map(d -> d.staple().label()).toList());
    }

    @Test
    void whatIsInDoubtIsToldInThousandths() {
        StapleReadings again = new StapleReadings("x", List.of(47.00, 47.01, 47.08), List.of(3.38), List.of(2.09), "", "");
        assertEquals("Repeated readings of length differ by 3.1 thou; this caliper explains 1.6 thou. Read it again.", Lengths.THOU.told(doubts(again).get(0).told()));
        String far = Lengths.THOU.told(doubts(StapleReadings.of("x", 46.01, 3.38, 2.09)).get(0).told());
        assertTrue(far.startsWith("Length 1811.4 thou is 39.4 thou less than the middle of the batch, 1850.8 thou; most lie within "), far);
    }

    @Test
    void repeatsThatTheCaliperCannotExplain() {
        List<Doubt> found = doubts(new StapleReadings("x", List.of(47.00, 47.01, 47.08), List.of(3.38), List.of(2.09), "", ""));
        assertEquals(1, found.size());
        assertEquals(47.08, found.get(0).value());
        assertEquals("Repeated readings of length differ by 0.08 mm; this caliper explains 0.04 mm. Read it again.", found.get(0).why());
        assertEquals(List.of(), doubts(new StapleReadings("x", List.of(47.00, 47.04), List.of(3.38), List.of(2.09), "", "")));
    }
}
