package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class SplitterTest {
    private static final int SETTINGS = 14;

    /** Unbroken stretches, and unions of up to three. */
    private static List<BitSet> staples(SplittableRandom random, int stretches) {
        List<BitSet> staples = new ArrayList<>();
        int count = 1 + random.nextInt(9);
        for (int i = 0; i < count; i++) {
            BitSet staple = new BitSet();
            for (int k = 1 + random.nextInt(stretches); k > 0; k--) {
                int from = random.nextInt(SETTINGS);
                staple.set(from, Math.min(SETTINGS, from + 1 + random.nextInt(4)));
            }
            staples.add(staple);
        }
        return staples;
    }

    private static int bruteForce(List<BitSet> staples) {
        int best = SETTINGS;
        for (int choice = 0; choice < 1 << SETTINGS; choice++) {
            BitSet settings = BitSet.valueOf(new long[] {choice});
            if (settings.cardinality() < best && staples.stream().allMatch(s -> s.intersects(settings))) {
                best = settings.cardinality();
            }
        }
        return best;
    }

    @Test
    void asFewAsBruteForceFinds() {
        SplittableRandom random = new SplittableRandom(41);
        for (int trial = 0; trial < 400; trial++) {
            List<BitSet> staples = staples(random, trial % 2 == 0 ? 1 : 3);
            Splitter.Split split = Splitter.fewest(staples);
            assertTrue(split.fewest());
            assertEquals(bruteForce(staples), split.settings().size(), () -> staples.toString());
            for (BitSet staple : staples) {
                assertTrue(split.settings().stream().anyMatch(staple::get));
            }
        }
    }

    @Test
    void manyBrokenStretchesAreStillSolved() {
        SplittableRandom random = new SplittableRandom(5);
        List<BitSet> staples = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            BitSet staple = new BitSet();
            int from = random.nextInt(60);
            staple.set(from, from + 12);
            staple.set(from + 25, from + 30);
            staples.add(staple);
        }
        Splitter.Split split = Splitter.fewest(staples);
        assertTrue(split.fewest());
        assertTrue(split.settings().size() <= 5, split.toString());
    }

    @Test
    void noStaplesNeedNoSetting() {
        assertEquals(List.of(), Splitter.fewest(List.of()).settings());
        assertThrows(IllegalArgumentException.class, () -> Splitter.fewest(List.of(new BitSet())));
    }
}
