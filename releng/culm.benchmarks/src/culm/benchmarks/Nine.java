package culm.benchmarks;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.rules.Rules;
import culm.explore.Spread;
import culm.explore.Study;
import culm.explore.Varied;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.profile.Table;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.staple.StraightSidedOval;

/** The tolerance run whose speed is told: straight-sided oval, middle and side, measured widths, square edges; nine inputs vary. */
final class Nine {
    private static final String[] PATHS = {Inputs.STAPLE_LENGTH, "staple.bottom", "staple.topWide", "staple.topNarrow", Inputs.TUBE, "gouge.middle", "gouge.side",
        Varied.WIDTH, Inputs.TIE_LENGTH};
    private static final double[] GIVE_OR_TAKE = {0.1, 0.05, 0.05, 0.05, 0.2, 0.02, 0.02, 0.05, 0.3};

    private Nine() {
    }

    static Blank blank() {
        return new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape()))
                .set(Inputs.COMPRESSION, 0).set(Inputs.CORK_TOP, 25).set(Inputs.FINISHED, 70).build();
    }

    /** @param inputs how many of the nine vary; @param normal normal instead of uniform */
    static Study study(Blank blank, int inputs, boolean normal) {
        List<Varied> varied = new ArrayList<>();
        for (int i = 0; i < inputs; i++) {
            varied.add(new Varied(PATHS[i], normal ? new Spread.Normal(GIVE_OR_TAKE[i] / 2) : new Spread.Uniform(GIVE_OR_TAKE[i])));
        }
        return new Study(blank, varied, Limits.STANDARD, Rules.load());
    }

    /** The same widths read at more places. */
    static Blank rows(int rows) {
        Blank blank = blank();
        Table few = blank.shape().values().table(MeasuredShape.PLACES);
        culm.geometry.numeric.Pchip widths = new culm.geometry.numeric.Pchip(few.column(0), few.column(1));
        double[][] many = new double[rows][];
        for (int i = 0; i < rows; i++) {
            double place = 37.0 * i / (rows - 1);
            many[i] = new double[] {place, widths.value(Math.min(37, place))};
        }
        return blank.edit().shape(blank.shape().with(blank.shape().values().with(MeasuredShape.PLACES, Table.of(many)))).build();
    }
}
