package culm.figures;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** Blanks for the tests of drawings; the first is the whole blank of the geometry page's check values. */
public final class Blanks {
    private Blanks() {
    }

    /** Staple 47, tie 72, wrap 46.5: closes at 46.0489 without compression. */
    public static Blank example() {
        return new BlankBuilder(Profile.<StapleType>standard(new StraightSidedOval()), Profile.<GougeType>standard(new MiddleAndSide()),
                Profile.<ShapeType>standard(new MeasuredShape())).set(Inputs.CORK_TOP, 25).set(Inputs.FINISHED, 70)
                .set("staple.bottom", 5.40).set("staple.topWide", 3.38).set("staple.topNarrow", 2.09).set(Inputs.COMPRESSION, 0).build();
    }

    /** Sides open: edges along the radius. */
    public static Blank open() {
        return example().edit().cut(new culm.blank.Cut(culm.geometry.shape.WidthMeasure.CHORD, culm.geometry.shape.EdgeKind.RADIAL, true, true)).build();
    }

    /** No cork, English horn lengths. */
    public static Blank noCork() {
        return example().edit().clear(Inputs.CORK_TOP).set(Inputs.STAPLE_LENGTH, 27).set(Inputs.TIE_LENGTH, 55).set(Inputs.WRAP_TOP, 26.5)
                .set(Inputs.WRAP_BOTTOM, 14).set(Inputs.FINISHED, 53).build();
    }

    public static Assessment assessed(Blank blank) {
        return Assessor.assess(blank);
    }
}
