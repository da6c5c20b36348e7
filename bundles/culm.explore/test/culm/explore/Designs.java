package culm.explore;

import java.util.SplittableRandom;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Cut;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.gouge.OffsetCircle;
import culm.geometry.profile.Table;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.Waisted;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.RolledSheet;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** Seeded random designs of every pairing of types and edges that the quick way knows; most close, some never, some cannot be computed. */
public final class Designs {
    private final SplittableRandom random;

    public Designs(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The example of the geometry's check values: straight-sided oval, middle and side, eight measured widths, square edges, tie 72. */
    public static Blank example() {
        return new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape()))
                .set(Inputs.COMPRESSION, 0).set(Inputs.CORK_TOP, 25).set(Inputs.FINISHED, 70).build();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private <T> T one(T[] of) {
        return of[random.nextInt(of.length)];
    }

    /** The next design. */
    public Blank next() {
        StapleType staple = one(new StapleType[] {new StraightSidedOval(), new RolledSheet(), new MeasuredStaple()});
        GougeType gouge = one(new GougeType[] {new MiddleAndSide(), new OffsetCircle(), new Concentric()});
        ShapeType shape = one(new ShapeType[] {new MeasuredShape(), new StraightTaper(), new Waisted()});
        double length = between(44, 49);
        double folded = between(35, 40);
        double middle = between(0.5, 0.66);
        BlankBuilder b = new BlankBuilder(Profile.standard(staple), Profile.standard(gouge), Profile.standard(shape))
                .cut(new Cut(one(WidthMeasure.values()), one(EdgeKind.values()), random.nextBoolean(), random.nextBoolean()))
                .set(Inputs.STAPLE_LENGTH, length).set(Inputs.FOLDED_LENGTH, folded).set(Inputs.TIE_LENGTH, length + between(22.5, 27))
                .set(Inputs.TUBE, between(9.5, 13)).set("gouge.middle", middle).set(Inputs.COMPRESSION, between(0, 0.15))
                .set(Inputs.SWELL_WIDTH, between(-0.02, 0.06)).set(Inputs.SWELL_THICKNESS, between(-0.02, 0.1))
                .set(Inputs.WRAP_TOP, length + between(-1.2, 0.1)).set(Inputs.CORK_TOP, between(24, 34)).set(Inputs.FINISHED, length + between(-0.2, 26));
        double bottom = between(4.8, 6);
        double wide = between(2.9, 3.7);
        double narrow = between(1.7, 2.4);
        if (staple instanceof MeasuredStaple) {
            double up = between(0.4, 0.7);
            b.staple(b.build().staple().with(b.build().staple().values().with("places", Table.of(new double[] {0, bottom, bottom},
                    new double[] {46.5 * up, bottom + up * (wide - bottom) + between(-0.1, 0.1), bottom + up * (narrow - bottom) + between(-0.1, 0.1)}, new double[] {46.5, wide, narrow}))));
        } else {
            b.set("staple.bottom", bottom).set("staple.topWide", wide).set("staple.topNarrow", narrow);
        }
        if (gouge instanceof MiddleAndSide) {
            b.set("gouge.side", middle - between(-0.02, 0.2)).set("gouge.sideAt", between(3, 4));
        } else if (gouge instanceof OffsetCircle) {
            b.set("gouge.radius", between(4.7, 7));
        }
        widths(b, shape, folded, between(0.95, 1.11) * (b.build().cut().edges() == EdgeKind.RADIAL ? 1.09 : 1));
        if (random.nextInt(4) == 0) {
            b.set(Inputs.CROOKED, between(-0.1, 0.1));
        }
        if (random.nextInt(4) == 0) {
            b.set(Inputs.DELTA, between(-0.05, 0.05));
        }
        return b.build();
    }

    private void widths(BlankBuilder b, ShapeType shape, double folded, double scale) {
        double[] place = {0, 4, 10, 16, 22, 26, 30, folded};
        double[] usual = {7.00, 6.95, 6.55, 5.75, 5.10, 4.83, 4.65, 4.35};
        double end = scale * (random.nextInt(3) == 0 ? between(4.6, 5.2) : between(4.2, 4.6));
        if (shape instanceof MeasuredShape) {
            double[][] rows = new double[place.length][];
            for (int i = 0; i < rows.length; i++) {
                rows[i] = new double[] {place[i], i == 7 ? end : scale * usual[i] + between(-0.05, 0.05)};
            }
            b.shape(b.build().shape().with(b.build().shape().values().with(MeasuredShape.PLACES, Table.of(rows))));
        } else if (shape instanceof StraightTaper) {
            b.set("shape.fold", scale * between(5.6, 6.2)).set("shape.end", Math.min(end, scale * 4.5));
        } else {
            b.set("shape.fold", scale * 7).set("shape.throat", scale * between(4.6, 5)).set("shape.throatAt", between(20, 30)).set("shape.end", end);
        }
        double less = between(0.02, 0.3);
        b.insideWidths(Table.of(new double[] {0, scale * 7 - less}, new double[] {22, scale * 5.1 - less}, new double[] {folded, scale * 4.35 - less}));
    }

    /** Usual give or takes of nine inputs. */
    public static java.util.List<Varied> nine() {
        String[] paths = {Inputs.STAPLE_LENGTH, "staple.bottom", "staple.topWide", "staple.topNarrow", Inputs.TUBE, "gouge.middle", "gouge.side", Varied.WIDTH,
            Inputs.TIE_LENGTH};
        double[] giveOrTake = {0.1, 0.05, 0.05, 0.05, 0.2, 0.02, 0.02, 0.05, 0.3};
        java.util.List<Varied> all = new java.util.ArrayList<>();
        for (int i = 0; i < paths.length; i++) {
            all.add(new Varied(paths[i], new Spread.Uniform(giveOrTake[i])));
        }
        return all;
    }
}
