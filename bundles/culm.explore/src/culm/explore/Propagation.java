package culm.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

import culm.explore.internal.run.Uniforms;
import culm.explore.internal.run.Workers;

/**
 * Propagates independent distributions through any function (JCGM 101:2008, clause 5 and 7), by the same draws as a tolerance run. The result depends on
 * seed and number of draws alone, not on the number of threads.
 */
public final class Propagation {
    private static final int PIECE = 4096;

    private Propagation() {
    }

    /** An input: a name of its own, its value, how it scatters around it. */
    public record In(String name, double value, Spread spread) {
    }

    /**
     * What came out.
     * @param sorted every value of the function, ascending
     */
    public record Out(double[] sorted, double mean, double deviation) {
        /** The value below which a share of the draws lies, 0 &lt; share &lt; 1 (JCGM 101:2008, 7.5.1: the nearest order statistic). */
        public double quantile(double share) {
            return sorted[(int) Math.max(0, Math.min(sorted.length - 1, Math.round(share * sorted.length) - 1))];
        }

        /** Half of the width of the probabilistically symmetric interval of a coverage (JCGM 101:2008, 7.7). */
        public double halfWidth(double coverage) {
            return (quantile((1 + coverage) / 2) - quantile((1 - coverage) / 2)) / 2;
        }
    }

    /** Draws and evaluates. @param draws how many, at most 20 million, since all values are kept */
    public static Out run(List<In> inputs, ToDoubleFunction<double[]> function, int draws, long seed, int threads) {
        double[] all = new double[draws];
        List<Workers.Work> works = new ArrayList<>();
        for (int t = 0; t < threads; t++) {
            works.add(piece -> evaluate(inputs, function, (int) piece * PIECE, Math.min(draws, ((int) piece + 1) * PIECE), seed, all));
        }
        Workers.run(works, (draws + PIECE - 1) / PIECE, () -> false, () -> { });
        double sum = 0;
        for (double y : all) {
            sum += y;
        }
        double mean = sum / draws;
        double squares = 0;
        for (double y : all) {
            squares += (y - mean) * (y - mean);
        }
        Arrays.parallelSort(all);
        return new Out(all, mean, Math.sqrt(squares / (draws - 1)));
    }

    private static void evaluate(List<In> inputs, ToDoubleFunction<double[]> function, int from, int to, long seed, double[] all) {
        int n = to - from;
        double[][] columns = new double[inputs.size()][n];
        long[] bits = new long[n];
        double[] u = new double[n];
        for (int i = 0; i < columns.length; i++) {
            In in = inputs.get(i);
            new Uniforms(seed, in.name()).fill(from, bits, u, n);
            in.spread().fill(u, in.value(), columns[i], n);
        }
        double[] x = new double[columns.length];
        for (int l = 0; l < n; l++) {
            for (int i = 0; i < x.length; i++) {
                x[i] = columns[i][l];
            }
            all[from + l] = function.applyAsDouble(x);
        }
    }
}
