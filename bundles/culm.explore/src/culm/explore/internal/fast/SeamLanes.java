package culm.explore.internal.fast;

import culm.blank.Blank;
import culm.blank.Inputs;

/**
 * Both sides of the seam, a block at a time: how far it is open at one height in every lane, G = 2 (P/4 + q J / 2 - g m - delta) + |crooked|, and its
 * slope along z. Where the rest has converged, the error of G is that of the {@link BendRule}, twice.
 */
final class SeamLanes {
    /** G and dG/dz at the heights last asked for, mm and mm/mm. */
    final double[] open = new double[Columns.SIZE];
    final double[] slope = new double[Columns.SIZE];
    /** Growth of thickness q. */
    final double[] thickness = new double[Columns.SIZE];
    final StapleLanes staple;
    final GougeLanes gouge;
    final BendLanes bend;
    final EdgeLanes edge;
    final WidthLanes width;
    final double[] tie;
    private final double[] gougeWidth = new double[Columns.SIZE];
    private final double[] shapeWidth = new double[Columns.SIZE];
    private final double[] swellWidth;
    private final double[] swellThickness;
    private final double[] compression;
    private final double[] delta;
    private final double[] crooked;
    private final double[] s = new double[Columns.SIZE];
    private final boolean shapeDry;
    private final boolean gougeDry;

    SeamLanes(Columns columns, BendRule rule) {
        Blank base = columns.base();
        tie = columns.of(Inputs.TIE_LENGTH);
        swellWidth = columns.of(Inputs.SWELL_WIDTH);
        swellThickness = columns.of(Inputs.SWELL_THICKNESS);
        compression = columns.of(Inputs.COMPRESSION);
        delta = columns.of(Inputs.DELTA);
        crooked = columns.of(Inputs.CROOKED);
        shapeDry = base.cut().shapeDry();
        gougeDry = base.cut().gougeDry();
        gouge = new GougeLanes(columns);
        staple = Kinds.staple(columns, rule);
        width = Kinds.width(columns);
        edge = new EdgeLanes(gouge, columns);
        bend = new BendLanes(rule, gouge, gougeWidth, thickness);
    }

    /** Takes in the columns once for a block. */
    void prepare(double[] speeds, int n) {
        gouge.prepare(n);
        staple.prepare(n);
        width.prepare(n);
        edge.prepare(n);
        for (int l = 0; l < n; l++) {
            double wider = 1 + swellWidth[l];
            gougeWidth[l] = gougeDry ? wider : 1;
            shapeWidth[l] = shapeDry ? wider : 1;
            thickness[l] = (gougeDry ? 1 + swellThickness[l] : 1) * (1 - compression[l]);
        }
        bend.start(speeds, n);
    }

    /**
     * The seam at heights z with J, how the blades lie, already known; only {@link StapleLanes#quarter} of this height has to be set.
     * @param turning dJ/dz in every lane, for the slope only
     */
    void meet(double[] z, double[] integral, double[] turning, int n) {
        distance(tie, z, s, n);
        width.at(s, n);
        edge.at(width, s, n);
        open(staple.quarter, integral, thickness, edge.half, shapeWidth, delta, crooked, open, n);
        slope(staple.slope, turning, thickness, edge.slope, edge.along, shapeWidth, slope, n);
    }

    private static void distance(double[] tie, double[] z, double[] s, int n) {
        for (int l = 0; l < n; l++) {
            s[l] = tie[l] - z[l];
        }
    }

    private static void open(double[] quarter, double[] integral, double[] q, double[] half, double[] growth, double[] delta, double[] crooked,
            double[] open, int n) {
        for (int l = 0; l < n; l++) {
            open[l] = 2 * (quarter[l] + 0.5 * q[l] * integral[l] - growth[l] * half[l] - delta[l]) + Math.abs(crooked[l]);
        }
    }

    private static void slope(double[] quarter, double[] turning, double[] q, double[] half, double[] width, double[] growth, double[] slope, int n) {
        for (int l = 0; l < n; l++) {
            slope[l] = 2 * (quarter[l] + 0.5 * q[l] * turning[l] + growth[l] * half[l] * width[l]);
        }
    }

    /** Lays the blades at heights z but leaves the seam to {@link #meet}. */
    void bend(double[] z, int rounds, int n) {
        staple.at(z, n);
        bend.bend(staple.rho, rounds, n);
    }

    /**
     * Upper bound of dM/dz from heights z to the top, negative where the half-width needed is proven to fall all the way. With v = d phi / dz:
     * v' = f v + (d rho / dz) / D, |f| at most |t'| (q + phi') / 2D; by parts, -v is at most (shortens + variation * turns) / D. dJ/dz is the integral of t' v.
     */
    void neededRises(double[] z, double[] rises, int n) {
        java.util.Arrays.fill(rises, 0, n, Double.NEGATIVE_INFINITY);
        StapleLanes.Bounds b = staple.bounds;
        for (int which = 0; which < staple.cases(); which++) {
            staple.bound(z, which, n);
            neededRises(gouge.bark, gouge.circle, gouge.offset, gougeWidth, thickness, b.falls, b.shortens, b.turns, b.quarter, rises, n);
        }
    }

    private static void neededRises(double[] bark, double[] circle, double[] offset, double[] width, double[] thickness, double[] falls, double[] shortens,
            double[] turns, double[] quarter, double[] rises, int n) {
        for (int l = 0; l < n; l++) {
            double e = Math.abs(offset[l]);
            double up = Math.max(0, Math.signum(offset[l]));
            double q = thickness[l];
            double thick = bark[l] - circle[l] + e;
            double inner = width[l] * (bark[l] - 0.5 * thick);
            double angle = (quarter[l] + q * Math.PI / 4 * thick) / inner;
            double steep = e * Math.min(1, angle) * (1 + up);
            double variation = (steep * (q * Math.PI / 4 + 0.5 * width[l] * angle) + e * width[l]) / inner;
            double least = (1 - up) * shortens[l] + up * turns[l] * (1 + variation);
            double turning = Math.PI / 2 * steep * (least + variation * turns[l]) / inner;
            rises[l] = Math.max(rises[l], 0.5 * q * turning - falls[l]);
        }
    }

    /** Whether {@link #neededRises} is a slope as it is, not only its sign. */
    boolean toScale() {
        return staple.cases() == 1;
    }

    /** Growth of the width in one lane. */
    double growth(int l) {
        return shapeWidth[l];
    }
}
