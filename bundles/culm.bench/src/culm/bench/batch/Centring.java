package culm.bench.batch;

import java.util.BitSet;
import java.util.List;

/**
 * Moves a given number of settings so that staples come near to the turns wanted: each staple goes to the setting that suits it best, each
 * setting to the tie length that suits its staples best, until nothing moves (Lloyd's method). Every staple stays served. Makes the sum of
 * squared differences small; the smallest is not promised.
 */
final class Centring {
    private static final int ROUNDS = 200;
    private final List<BitSet> allowed;
    private final double[][] turns;
    private final double wanted;

    /** @param turns for each staple the turns left at each setting; only looked at where allowed */
    Centring(List<BitSet> allowed, double[][] turns, double wanted) {
        this.allowed = allowed;
        this.turns = turns;
        this.wanted = wanted;
    }

    /** The setting of each staple, starting from settings that serve all. */
    int[] improve(List<Integer> start) {
        int[] settings = start.stream().mapToInt(Integer::intValue).toArray();
        int[] serves = assign(settings);
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = false;
            for (int j = 0; j < settings.length; j++) {
                int better = middle(settings[j], serves);
                moved |= better != settings[j];
                settings[j] = better;
            }
            serves = assign(settings);
            if (!moved) {
                break;
            }
        }
        return serves;
    }

    private int[] assign(int[] settings) {
        int[] serves = new int[allowed.size()];
        for (int i = 0; i < serves.length; i++) {
            double best = Double.POSITIVE_INFINITY;
            for (int setting : settings) {
                if (allowed.get(i).get(setting) && cost(i, setting) < best) {
                    best = cost(i, setting);
                    serves[i] = setting;
                }
            }
        }
        return serves;
    }

    /** The best setting for all staples that this one serves now; itself when it serves none. */
    private int middle(int setting, int[] serves) {
        BitSet common = null;
        for (int i = 0; i < serves.length; i++) {
            if (serves[i] == setting) {
                if (common == null) {
                    common = (BitSet) allowed.get(i).clone();
                } else {
                    common.and(allowed.get(i));
                }
            }
        }
        if (common == null) {
            return setting;
        }
        int best = setting;
        double least = Double.POSITIVE_INFINITY;
        for (int k = common.nextSetBit(0); k >= 0; k = common.nextSetBit(k + 1)) {
            double sum = 0;
            for (int i = 0; i < serves.length; i++) {
                sum += serves[i] == setting ? cost(i, k) : 0;
            }
            if (sum < least) {
                least = sum;
                best = k;
            }
        }
        return best;
    }

    private double cost(int staple, int setting) {
        double off = turns[staple][setting] - wanted;
        return off * off;
    }
}
