package culm.benchmarks;

import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

import culm.blank.Blank;
import culm.blank.Closing;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.explore.Study;
import culm.explore.ToleranceResult;
import culm.explore.ToleranceRun;
import culm.explore.Watcher;

/** Full closings a second, rules judged and counted, in a tolerance run with nine varying inputs on two threads; beside it the reference path on two threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class ToleranceBenchmark {
    private static final int BLANKS = 500_000;
    private final Study uniform = Nine.study(Nine.blank(), 9, false);
    private final Study normal = Nine.study(Nine.blank(), 9, true);
    private final Blank base = Nine.blank();
    private long seed;

    @Benchmark
    @OperationsPerInvocation(BLANKS)
    public ToleranceResult uniform() {
        return ToleranceRun.run(uniform, BLANKS, seed++, 2, Watcher.none());
    }

    @Benchmark
    @OperationsPerInvocation(BLANKS)
    public ToleranceResult normal() {
        return ToleranceRun.run(normal, BLANKS, seed++, 2, Watcher.none());
    }

    @Benchmark
    @OperationsPerInvocation(BLANKS)
    public ToleranceResult uniformOneThread() {
        return ToleranceRun.run(uniform, BLANKS, seed++, 1, Watcher.none());
    }

    /** The reference path, a little other tie each time. */
    @Benchmark
    @Threads(2)
    public Closing reference() {
        return ClosingFinder.find(base.with(Inputs.TIE_LENGTH, 72 + 1e-4 * (System.nanoTime() % 1000)));
    }
}
