package culm.blank;

import java.util.SplittableRandom;

import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MeasuredGouge;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.gouge.OffsetCircle;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
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

/**
 * Seeded random designs that could be made: every pairing of staple, gouge, shape and edges in turn, numbers around common practice. The same number
 * always gives the same design.
 */
final class Designs {
    /** Number of pairings: 3 staples, 4 gouges, 3 shapes, 3 edges, gouge given once or twice. */
    static final int PAIRINGS = 3 * 4 * 3 * 3 * 2;
    private final SplittableRandom random;
    private final int pairing;
    private double length;
    private double tube;
    private double folded;

    private Designs(long number) {
        random = new SplittableRandom(0x5EEDL * 1000003 + number);
        pairing = (int) (number % PAIRINGS);
    }

    /** Design of this number, from 0. */
    static Blank number(long number) {
        return new Designs(number).blank();
    }

    private Blank blank() {
        length = between(44, 49);
        tube = between(9.8, 11.5);
        folded = between(34, 40);
        BlankBuilder b = new BlankBuilder(staple(pairing % 3), gouge(pairing / 3 % 4), shape(pairing / 12 % 3));
        EdgeKind edges = EdgeKind.values()[pairing / 36 % 3];
        b.cut(new Cut(random.nextBoolean() ? WidthMeasure.CHORD : WidthMeasure.ARC, edges, random.nextBoolean(), random.nextBoolean()));
        if (edges == EdgeKind.TWO_WIDTHS) {
            b.insideWidths(inside());
        }
        if (pairing / 108 == 1) {
            b.gougeEnd(gouge(pairing / 3 % 4));
        }
        double tie = length + between(23, 27.5);
        return b.set(Inputs.STAPLE_LENGTH, length).set(Inputs.TUBE, tube).set(Inputs.FOLDED_LENGTH, folded).set(Inputs.TIE_LENGTH, tie)
                .set(Inputs.WRAP_TOP, length - between(0, 1)).set(Inputs.CORK_TOP, between(22, 28)).set(Inputs.SWELL_WIDTH, between(-0.01, 0.04))
                .set(Inputs.SWELL_THICKNESS, between(0, 0.08)).set(Inputs.COMPRESSION, between(0, 0.12)).set(Inputs.DELTA, between(-0.05, 0.05)).build();
    }

    private Profile<StapleType> staple(int kind) {
        double bottom = between(4.8, 6.2);
        double wide = between(2.7, 3.6);
        double narrow = between(1.5, 2.3);
        if (kind == 2) {
            double z1 = between(8, 20);
            double z2 = between(30, 38);
            Table rows = Table.of(new double[] {0, bottom, bottom * between(0.95, 1.05)},
                    new double[] {z1, mix(bottom, wide, z1 / length) * between(0.98, 1.02), mix(bottom, narrow, z1 / length) * between(0.98, 1.02)},
                    new double[] {z2, mix(bottom, wide, z2 / length) * between(0.98, 1.02), mix(bottom, narrow, z2 / length) * between(0.98, 1.02)},
                    new double[] {length, wide, narrow});
            return new Profile<>(new MeasuredStaple(), Values.NONE.with("places", rows));
        }
        Values values = Values.NONE.with("bottom", bottom).with("topWide", wide).with("topNarrow", narrow);
        return new Profile<>(kind == 0 ? new StraightSidedOval() : new RolledSheet(), values);
    }

    private Profile<GougeType> gouge(int kind) {
        double middle = between(0.52, 0.66);
        double side = middle - between(0.02, 0.2);
        return switch (kind) {
            case 0 -> new Profile<>(new Concentric(), Values.NONE.with("middle", middle));
            case 1 -> new Profile<>(new OffsetCircle(), Values.NONE.with("middle", middle).with("radius", tube / 2 - middle + between(-0.1, 1.2)));
            case 2 -> new Profile<>(new MiddleAndSide(), Values.NONE.with("middle", middle).with("side", side).with("sideAt", between(3, 4)));
            default -> new Profile<>(new MeasuredGouge(), Values.NONE.with("places", Table.of(new double[] {0, middle},
                    new double[] {between(0.8, 1.6), middle - 0.15 * (middle - side)}, new double[] {between(1.9, 2.8), mix(middle, side, 0.6)},
                    new double[] {between(3.2, 4), side})));
        };
    }

    private Profile<ShapeType> shape(int kind) {
        double wider = EdgeKind.values()[pairing / 36 % 3] == EdgeKind.RADIAL ? between(0.1, 0.45) : 0;
        double fold = between(6.6, 7.4) + wider;
        double end = between(4.1, 4.7) + wider;
        return switch (kind) {
            case 0 -> new Profile<>(new StraightTaper(), Values.NONE.with("fold", fold).with("end", end + 0.2));
            case 1 -> new Profile<>(new Waisted(),
                    Values.NONE.with("fold", fold).with("throatAt", between(24, 30)).with("throat", between(4.5, 5.1) + wider).with("end", end + 0.3));
            default -> new Profile<>(new MeasuredShape(), Values.NONE.with("places", Table.of(new double[] {0, fold}, new double[] {between(8, 11), fold - 0.5},
                    new double[] {between(15, 19), 5.7 + wider + between(-0.2, 0.2)}, new double[] {between(21, 23.5), 5.1 + wider + between(-0.1, 0.1)},
                    new double[] {between(25, 27), 4.85 + wider + between(-0.1, 0.1)}, new double[] {between(29, 32), 4.65 + wider + between(-0.05, 0.1)},
                    new double[] {folded + 1.5, end})));
        };
    }

    /** Inside widths: at some places the inner corner meets first, at others the outer one. */
    private Table inside() {
        double f = between(0.88, 1.0);
        return Table.of(new double[] {0, 6.8 * f}, new double[] {15, 5.7 * f * between(0.97, 1.01)}, new double[] {24, 4.9 * f * between(0.97, 1.01)},
                new double[] {31, 4.6 * f * between(0.97, 1.01)}, new double[] {folded + 1.5, 4.3 * f});
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double mix(double a, double b, double u) {
        return a + u * (b - a);
    }
}
