package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

/** Closing against an integration written a second time ({@link Reference}), over seeded designs of every pairing of types and edges. */
class IndependentClosingTest {
    private static final int DESIGNS = 2000;
    private static final double AGREES = 1e-9;

    private record Outcome(double needed, double open, double closing, boolean closed) {
    }

    @Test
    void neededGivenAndClosingAgree() {
        Outcome[] all = LongStream.range(0, DESIGNS).parallel().mapToObj(IndependentClosingTest::compare).toArray(Outcome[]::new);
        double needed = 0;
        double open = 0;
        double closing = 0;
        int closed = 0;
        for (int i = 0; i < all.length; i++) {
            assertTrue(all[i].needed <= AGREES, "M of design " + i + " is off by " + all[i].needed);
            assertTrue(all[i].open <= 2 * AGREES, "G of design " + i + " is off by " + all[i].open);
            assertTrue(all[i].closing <= AGREES, "closing of design " + i + " times slope is off by " + all[i].closing);
            needed = Math.max(needed, all[i].needed);
            open = Math.max(open, all[i].open);
            closing = Math.max(closing, all[i].closing);
            closed += all[i].closed ? 1 : 0;
        }
        assertTrue(closed > DESIGNS / 2, "too few designs close on the overlap to say anything: " + closed);
        System.out.printf("%d designs, %d closings on the overlap; largest differences: M %.1e mm, G %.1e mm, closing times slope %.1e mm%n", DESIGNS, closed,
                needed, open, closing);
    }

    private static Outcome compare(long number) {
        Blank blank = Designs.number(number);
        Seam seam = new Seam(blank);
        Reference reference = new Reference(blank);
        Closing closing = ClosingFinder.find(blank);
        assertTrue(closing.problem().isEmpty(), () -> "design " + number + ": " + closing.problem().get());
        double end = closing.course().get(0).z();
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double needed = 0;
        double open = 0;
        for (double share : new double[] {0, 0.31, 0.77, 1}) {
            double z = end + share * (top - end);
            double m = reference.needed(z);
            double g = 2 * (m - reference.given(z));
            needed = Math.max(needed, Math.abs(seam.needed(z) - m));
            open = Math.max(open, Math.abs(seam.open(z) - g));
        }
        boolean inside = closing.at().isPresent() && !closing.closedEverywhere();
        if (!inside) {
            assertEquals(closing.at().isPresent(), reference.open(top) <= 0, "design " + number);
            return new Outcome(needed, open, 0, false);
        }
        double z = closing.at().getAsDouble();
        double steep = Math.abs(seam.open(z + 1e-5) - seam.open(z - 1e-5)) / 2e-5;
        return new Outcome(needed, open, Math.abs(reference.open(z)), steep > 0);
    }
}
