package culm.testkit;

import java.util.LinkedHashMap;
import java.util.Map;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Cut;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.staple.StraightSidedOval;

/** Blanks to try rules and exporters on: what a studio meets, and what it should not. All invented. */
public final class Sample {
    private Sample() {
    }

    /** A blank whose sides close about one turn under the top of the wrap. */
    public static Blank works() {
        return new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape()))
                .set(Inputs.CORK_TOP, 25).set(Inputs.FINISHED, 70).build();
    }

    /** Named assessments: one that works, and each way in which one may not, or in which numbers are missing. */
    public static Map<String, Assessment> assessments() {
        Map<String, Blank> blanks = new LinkedHashMap<>();
        blanks.put("works", works());
        blanks.put("no cork, nothing optional", works().edit().clear(Inputs.CORK_TOP).clear(Inputs.FINISHED).build());
        blanks.put("sides never close", works().edit().cut(new Cut(WidthMeasure.CHORD, EdgeKind.RADIAL, true, true)).build());
        blanks.put("closes above the wrap", works().with(Inputs.WRAP_TOP, 44));
        blanks.put("closes too low", works().with(Inputs.TIE_LENGTH, 70));
        blanks.put("pinched", works().with(Inputs.TIE_LENGTH, 67));
        blanks.put("overwrapped", works().with(Inputs.WRAP_TOP, 48));
        blanks.put("crooked", works().with(Inputs.CROOKED, 0.2));
        blanks.put("top changed over", works().edit().set("staple.topWide", 2.09).set("staple.topNarrow", 3.38).build());
        blanks.put("no overlap", works().with(Inputs.TIE_LENGTH, 90));
        blanks.put("fold below the staple's top", works().with(Inputs.TIE_LENGTH, 46));
        blanks.put("gouge that cannot be", works().edit().set("gouge.middle", 2.5).set("gouge.side", 0.01).build());
        blanks.put("widths that do not reach", works().edit().shape(new Profile<ShapeType>(new MeasuredShape(), Values.NONE.with(MeasuredShape.PLACES,
                Table.of(new double[] {0, 7}, new double[] {20, 5.5})))).build());
        blanks.put("closes, opens, closes again", works().edit().shape(new Profile<ShapeType>(new MeasuredShape(), Values.NONE.with(MeasuredShape.PLACES,
                Table.of(new double[] {0, 7}, new double[] {22, 5.2}, new double[] {27, 4.9}, new double[] {31, 4.3}, new double[] {34, 6.6}, new double[] {37, 6.6}))))
                .build());
        Map<String, Assessment> all = new LinkedHashMap<>();
        blanks.forEach((name, blank) -> all.put(name, Assessor.assess(blank)));
        return all;
    }
}
