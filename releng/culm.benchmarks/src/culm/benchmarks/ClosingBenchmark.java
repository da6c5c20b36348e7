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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Closing;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.blank.Seam;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MeasuredGouge;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.section.Section;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.staple.StraightSidedOval;

/** One section, the seam at one height, one closing, one assessment, for each kind of gouge; every call on a blank that is tied a little differently. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ClosingBenchmark {

    /** Kind of gouge. */
    @Param({"concentric", "middleAndSide", "measured"})
    public String gouge;

    private Blank blank;
    private Seam seam;
    private double moved;

    /** Builds the blank. */
    @Setup
    public void build() {
        GougeType type = switch (gouge) {
            case "concentric" -> new Concentric();
            case "measured" -> new MeasuredGouge();
            default -> new MiddleAndSide();
        };
        blank = new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(type), Profile.standard(new MeasuredShape())).build();
        seam = new Seam(blank);
    }

    private double next() {
        moved = moved < 1 ? moved + 0.001 : 0;
        return moved;
    }

    /** The outside and the bore at one height: perimeter and area of both. */
    @Benchmark
    public double section() {
        double z = 45 + next();
        Section outside = seam.parts().staple().outside(z);
        Section bore = seam.parts().staple().bore(z);
        return outside.perimeter() + outside.area() + bore.perimeter() + bore.area();
    }

    /** How far the sides are open at one height. */
    @Benchmark
    public double open() {
        return seam.open(45 + next());
    }

    /** Where the sides close, by the reference path. */
    @Benchmark
    public Closing closing() {
        return ClosingFinder.find(blank.with(Inputs.TIE_LENGTH, 72 + next()));
    }

    /** Every number of the blank, its give or take included. */
    @Benchmark
    public Assessment assessment() {
        return Assessor.assess(blank.with(Inputs.TIE_LENGTH, 72 + next()));
    }
}
