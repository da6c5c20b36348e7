package culm.bench.log;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What is usual for a length beside each blank of a log: as {@link LogMeasure#usual} of the others, sorted once for all of them. */
final class Usual {
    private final LogMeasure measure;
    private final double[] sorted;

    Usual(LogMeasure measure, List<Tied> log) {
        this.measure = measure;
        this.sorted = measure.possible(log).sorted().toArray();
    }

    /** What is usual without one of the log's lengths, mm; empty where nothing is. */
    OptionalDouble beside(double own) {
        int at = Arrays.binarySearch(sorted, own);
        int skip = at < 0 ? sorted.length : at;
        int n = at < 0 ? sorted.length : sorted.length - 1;
        return measure.orPractice(n == 0 ? OptionalDouble.empty() : OptionalDouble.of((other(skip, (n - 1) / 2) + other(skip, n / 2)) / 2));
    }

    private double other(int skip, int k) {
        return sorted[k < skip ? k : k + 1];
    }
}
