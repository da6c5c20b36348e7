package culm.benchmarks;

import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import culm.explore.ToleranceResult;
import culm.explore.ToleranceRun;
import culm.explore.Watcher;

/** How the time of a tolerance run grows: with the number of blanks, of varied inputs, of measured rows. Each alone; the others as in the usual run. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class GrowthBenchmark {
    private static final int USUAL = 200_000;

    /** Blanks. */
    @State(Scope.Benchmark)
    public static class Blanks {
        @Param({"50000", "200000", "800000"})
        public int blanks;
    }

    /** Varied inputs. */
    @State(Scope.Benchmark)
    public static class Varying {
        @Param({"1", "3", "6", "9"})
        public int inputs;
    }

    /** Rows of the shape. */
    @State(Scope.Benchmark)
    public static class Rows {
        @Param({"8", "16", "32", "64"})
        public int rows;
    }

    @Benchmark
    public ToleranceResult blanks(Blanks p) {
        return ToleranceRun.run(Nine.study(Nine.blank(), 9, false), p.blanks, 1, 2, Watcher.none());
    }

    @Benchmark
    public ToleranceResult inputs(Varying p) {
        return ToleranceRun.run(Nine.study(Nine.blank(), p.inputs, false), USUAL, 1, 2, Watcher.none());
    }

    @Benchmark
    public ToleranceResult rows(Rows p) {
        return ToleranceRun.run(Nine.study(Nine.rows(p.rows), 9, false), USUAL, 1, 2, Watcher.none());
    }
}
