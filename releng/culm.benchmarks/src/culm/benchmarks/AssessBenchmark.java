package culm.benchmarks;

import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.staple.StraightSidedOval;

/** One blank with the values that every type starts with: built from its parts, then judged. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class AssessBenchmark {

    private double tie = 72;

    /** Builds a blank that is tied a little differently each time. */
    @Benchmark
    public Blank build() {
        tie = tie < 73 ? tie + 0.001 : 72;
        return new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape()))
                .set(Inputs.STAPLE_LENGTH, 47).set(Inputs.WALL, 0.25).set(Inputs.TUBE, 10.5).set(Inputs.FOLDED_LENGTH, 37).set(Inputs.TIE_LENGTH, tie)
                .set(Inputs.WRAP_TOP, 46.5).set(Inputs.CORK_TOP, 25).set(Inputs.THREAD_DIAMETER, 0.41).set(Inputs.THREAD_PITCH, 0.41).build();
    }

    /** Builds it, and computes every number of its assessment. */
    @Benchmark
    public Assessment assess() {
        return Assessor.assess(build());
    }
}
