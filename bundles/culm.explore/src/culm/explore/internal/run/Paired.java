package culm.explore.internal.run;

import culm.explore.Share;
import culm.explore.Study;
import culm.explore.internal.fast.Columns;

/** Compares two studies draw by draw. */
public final class Paired {
    private Paired() {
    }

    /**
     * How many of the first draws pass in both, in the second only, in the first only, in neither.
     */
    public static long[] compare(Study one, Study other, long draws, long seed) {
        Block a = new Block(one, seed);
        Block b = new Block(other, seed);
        long[] counts = new long[4];
        for (long first = 0; first < draws; first += Columns.SIZE) {
            int n = (int) Math.min(Columns.SIZE, draws - first);
            int[] x = a.judged(first, n);
            int[] y = b.judged(first, n);
            for (int l = 0; l < n; l++) {
                counts[(x[l] == 0 ? 0 : 1) + (y[l] == 0 ? 0 : 2)]++;
            }
        }
        return new long[] {counts[0], counts[1], counts[2], counts[3]};
    }

    /**
     * Newcombe's interval of p2 - p1 for paired shares (method 10, with the continuity corrected phi).
     * @param counts pass in both, in the second only, in the first only, in neither
     */
    public static double[] interval(long[] counts) {
        double n = counts[0] + counts[1] + counts[2] + counts[3];
        Share first = new Share(counts[0] + counts[2], (long) n);
        Share second = new Share(counts[0] + counts[1], (long) n);
        double product = (double) (counts[0] + counts[1]) * (counts[2] + counts[3]) * (counts[0] + counts[2]) * (counts[1] + counts[3]);
        double cross = (double) counts[0] * counts[3] - (double) counts[1] * counts[2];
        double corrected = cross > n / 2 ? cross - n / 2 : cross >= 0 ? 0 : cross;
        double phi = product == 0 ? 0 : corrected / Math.sqrt(product);
        double d = second.value() - first.value();
        return new double[] {d - half(second.value() - second.low(), first.high() - first.value(), phi), d + half(second.high() - second.value(), first.value() - first.low(), phi)};
    }

    private static double half(double a, double b, double phi) {
        return Math.sqrt(Math.max(0, a * a - 2 * phi * a * b + b * b));
    }
}
