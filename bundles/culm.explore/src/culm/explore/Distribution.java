package culm.explore;

/**
 * How a result is distributed over the blanks that have it: counts on a fixed grid, so that any number of threads gives the same. Percentiles
 * are interpolated within a cell, true to one {@link #cell}.
 */
public final class Distribution {
    private final double from;
    private final double cell;
    private final long[] counts;
    private final long below;
    private final double mean;
    private final double deviation;

    /**
     * @param from   lower end of the first cell
     * @param cell   width of a cell
     * @param counts blanks in each cell
     * @param below  blanks that have no such number and count as lower than all others
     */
    public Distribution(double from, double cell, long[] counts, long below, double mean, double deviation) {
        this.from = from;
        this.cell = cell;
        this.counts = counts.clone();
        this.below = below;
        this.mean = mean;
        this.deviation = deviation;
    }

    /** Mean of those that have the number; NaN when none has. */
    public double mean() {
        return mean;
    }

    /** Their standard deviation. */
    public double deviation() {
        return deviation;
    }

    /** Width of a cell, the resolution of {@link #percentile}. */
    public double cell() {
        return cell;
    }

    /** How many blanks have the number. */
    public long count() {
        long sum = 0;
        for (long c : counts) {
            sum += c;
        }
        return sum;
    }

    /** The value below which p percent lie, blanks without the number counted as lowest; NaN where it falls among those, or without any. */
    public double percentile(double p) {
        long all = count() + below;
        double rank = p / 100 * all - below;
        if (all == below || rank < 0) {
            return Double.NaN;
        }
        double sum = 0;
        int last = -1;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0 && sum + counts[i] >= rank) {
                return from + cell * (i + (rank - sum) / counts[i]);
            }
            sum += counts[i];
            last = counts[i] > 0 ? i : last;
        }
        return from + cell * (last + 1);
    }

    /** The values at n evenly spaced shares, ascending: what {@link #percentile} gives at 50/n, 150/n, ... percent, in one pass. */
    public double[] samples(int n) {
        double[] samples = new double[n];
        double all = count() + below;
        double sum = below;
        int cellAt = 0;
        for (int i = 0; i < n; i++) {
            double rank = (i + 0.5) / n * all;
            while (cellAt < counts.length && (counts[cellAt] == 0 || sum + counts[cellAt] < rank)) {
                sum += counts[cellAt++];
            }
            samples[i] = rank < below || cellAt == counts.length ? Double.NaN : from + cell * (cellAt + (rank - sum) / counts[cellAt]);
        }
        return samples;
    }

    /** The counts in wider cells that begin at multiples of {@code width}, from the first to the last that is not empty. */
    public Histogram histogram(double width) {
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                first = Math.min(first, bin(i, width));
                last = Math.max(last, bin(i, width));
            }
        }
        if (first > last) {
            return new Histogram(0, width, new long[0]);
        }
        long[] wide = new long[last - first + 1];
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                wide[bin(i, width) - first] += counts[i];
            }
        }
        return new Histogram(first * width, width, wide);
    }

    private int bin(int i, double width) {
        return (int) Math.floor((from + cell * (i + 0.5)) / width);
    }

    /** Counts in cells of one width. */
    public record Histogram(double from, double width, long[] counts) {
    }
}
