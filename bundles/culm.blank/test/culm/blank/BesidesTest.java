package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.Test;

/** A blank that is assessed in two places at once has the same numbers and the same troubles, in the same order. */
class BesidesTest {
    private static final int BLANKS = 100;

    @Test
    void twoThreadsTellWhatOneTells() {
        AtomicInteger given = new AtomicInteger();
        int threads = 0;
        int bands = 0;
        int troubles = 0;
        ExecutorService other = Executors.newSingleThreadExecutor();
        try {
            for (int i = 0; i < BLANKS; i++) {
                Blank blank = i % 3 == 0 ? Designs.number(i).with(Inputs.TIE_LENGTH, 90) : Designs.number(i);
                Assessment one = Assessor.assess(blank);
                Assessment two = Assessor.assess(blank, work -> {
                    given.incrementAndGet();
                    other.execute(work);
                });
                assertEquals(one.thread(), two.thread());
                assertEquals(one.troubles(), two.troubles());
                assertEquals(one.turnsLeft(), two.turnsLeft());
                assertEquals(one.turnsBand(), two.turnsBand());
                assertEquals(one.openAtStapleTopBand(), two.openAtStapleTopBand());
                assertEquals(one.sensitivities(), two.sensitivities());
                threads += one.thread().isPresent() ? 1 : 0;
                bands += one.openAtStapleTopBand().isPresent() ? 1 : 0;
                troubles += one.troubles().isEmpty() ? 0 : 1;
            }
        } finally {
            other.shutdown();
        }
        assertTrue(given.get() >= BLANKS + 2 * bands && given.get() <= BLANKS + 5 * bands,
                "the thread of each; of each that has a give or take its inputs and its draws, once or once more deeper, and the slopes where it closes: " + given.get() + " with " + bands);
        assertTrue(threads > 40 && bands > 40 && troubles > 20, threads + " with a thread, " + bands + " with a give or take, " + troubles + " with troubles");
    }
}
