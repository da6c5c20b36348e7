package culm.blank;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * {@value #DRAWS} draws, uniform on -1 to 1, stratified in each input (Latin hypercube: McKay, Beckman, Conover, Technometrics 21 (1979) 239-245,
 * doi:10.2307/1268522): an input's draws are the middles of as many equal steps, shuffled. The shuffle depends on the input's name only, so a band does not
 * tremble when another input comes or goes.
 */
final class LatinDraws {
    static final int DRAWS = 4096;
    private static final int SHUFFLES = 101;
    private final short[][] order;

    LatinDraws(List<String> names) {
        order = new short[names.size()][];
        Set<Integer> taken = new HashSet<>();
        for (int k = 0; k < order.length; k++) {
            int slot = Math.floorMod(names.get(k).hashCode(), SHUFFLES);
            for (int tries = 0; tries < SHUFFLES && taken.contains(slot); tries++) {
                slot = (slot + 1) % SHUFFLES;
            }
            order[k] = taken.add(slot) ? Shuffles.ALL[slot] : shuffle(SHUFFLES + k);
        }
    }

    /** As many draws of input k as there is room for, from draw {@code from} on, each between -1 and 1 times {@code reach}. */
    void fill(int k, int from, double reach, double[] into) {
        for (int i = 0; i < into.length; i++) {
            into[i] = reach * ((2 * order[k][from + i] + 1 - DRAWS) / (double) DRAWS);
        }
    }

    /** Made once, when a band is first asked for, and never changed. */
    private static final class Shuffles {
        static final short[][] ALL = new short[SHUFFLES][];

        static {
            for (int s = 0; s < SHUFFLES; s++) {
                ALL[s] = shuffle(s);
            }
        }
    }

    private static short[] shuffle(int seed) {
        SplittableRandom random = new SplittableRandom(0x9E3779B9L * (seed + 1));
        short[] order = new short[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = (short) i;
        }
        return order;
    }
}
