package culm.blank;

import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.profile.Table;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** The whole blank whose check values were computed by an independent integration: no swelling, nothing lost under the thread. */
public final class Sample {
    static final Table WIDTHS = Table.of(new double[] {0, 7.00}, new double[] {4, 6.95}, new double[] {10, 6.55}, new double[] {16, 5.75},
            new double[] {22, 5.10}, new double[] {26, 4.83}, new double[] {30, 4.65}, new double[] {37, 4.35});

    private Sample() {
    }

    public static Blank blank() {
        return builder().build();
    }

    static BlankBuilder builder() {
        Profile<StapleType> staple = Profile.standard(new StraightSidedOval());
        Profile<GougeType> gouge = Profile.standard(new MiddleAndSide());
        Profile<ShapeType> shape = Profile.standard(new MeasuredShape());
        return new BlankBuilder(staple, gouge, shape.with(shape.values().with("places", WIDTHS)))
                .set("staple.bottom", 5.40).set("staple.topWide", 3.38).set("staple.topNarrow", 2.09).set(Inputs.STAPLE_LENGTH, 47).set(Inputs.WALL, 0.25)
                .set(Inputs.TUBE, 10.5).set("gouge.middle", 0.60).set("gouge.side", 0.45).set("gouge.sideAt", 3.5).set(Inputs.FOLDED_LENGTH, 37)
                .set(Inputs.TIE_LENGTH, 72).set(Inputs.WRAP_TOP, 46.5).set(Inputs.CORK_TOP, 25).set(Inputs.THREAD_DIAMETER, 0.41)
                .set(Inputs.THREAD_PITCH, 0.41).set(Inputs.START_TURNS, 5).set(Inputs.SWELL_WIDTH, 0).set(Inputs.SWELL_THICKNESS, 0)
                .set(Inputs.COMPRESSION, 0);
    }
}
