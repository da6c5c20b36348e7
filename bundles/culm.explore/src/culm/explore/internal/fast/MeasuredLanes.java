package culm.explore.internal.fast;

import culm.blank.Inputs;
import culm.blank.TopAxes;

/**
 * Staples measured at several heights: elliptical sections whose axes are monotone cubics; the rows keep their distance from the top, the first stays at the
 * bottom.
 */
final class MeasuredLanes extends StapleLanes {
    private static final String ROWS = "staple.places[";
    private final double[] length;
    private final double[][] height;
    private final double[][] place;
    private final double[][] wide;
    private final double[][] narrow;
    private final LaneRows across;
    private final LaneRows through;
    private final TopLanes top;
    private final double[] a = new double[Columns.SIZE];
    private final double[] b = new double[Columns.SIZE];
    private final double[] da = new double[Columns.SIZE];
    private final double[] db = new double[Columns.SIZE];
    private final double[] endA = new double[Columns.SIZE];
    private final double[] endB = new double[Columns.SIZE];
    private final double[] end = new double[Columns.SIZE];

    MeasuredLanes(Columns columns, BendRule rule) {
        super(rule);
        int rows = rows(columns);
        length = columns.of(Inputs.STAPLE_LENGTH);
        height = new double[rows][];
        place = new double[rows][Columns.SIZE];
        wide = new double[rows][];
        narrow = new double[rows][];
        for (int i = 0; i < rows; i++) {
            height[i] = columns.of(ROWS + i + "].height");
            wide[i] = i == rows - 1 ? new double[Columns.SIZE] : columns.of(ROWS + i + "].wide");
            narrow[i] = i == rows - 1 ? new double[Columns.SIZE] : columns.of(ROWS + i + "].narrow");
        }
        TopAxes axes = TopAxes.of(columns.base()).orElseThrow();
        top = new TopLanes(columns, axes.wide(), axes.narrow());
        across = new LaneRows(place, wide, new double[Columns.SIZE], 0);
        through = new LaneRows(place, narrow, new double[Columns.SIZE], 0);
    }

    static int rows(Columns columns) {
        return columns.base().staple().values().table("places").rows();
    }

    @Override
    void prepare(int n) {
        int last = height.length - 1;
        top.prepare(n);
        for (int l = 0; l < n; l++) {
            double shift = length[l] - height[last][l];
            place[0][l] = height[0][l];
            for (int i = 1; i < last; i++) {
                place[i][l] = height[i][l] + shift;
            }
            place[last][l] = length[l];
            wide[last][l] = 2 * top.a[l];
            narrow[last][l] = 2 * top.b[l];
        }
        across.prepare(n);
        through.prepare(n);
    }

    @Override
    void quarterAt(double[] z, int n) {
        axis(across, z, a, da, n);
        axis(through, z, b, db, n);
        EllipseLanes.quarter(a, b, da, db, quarter, slope, n);
    }

    private static void axis(LaneRows rows, double[] z, double[] axis, double[] slope, int n) {
        rows.at(z, n);
        for (int l = 0; l < n; l++) {
            axis[l] = rows.from(l) == 0 ? 0.5 * rows.width[l] : Double.NaN;
            slope[l] = 0.5 * rows.slope[l];
        }
    }

    @Override
    void at(double[] z, int n) {
        quarterAt(z, n);
        for (int i = 0; i < rule.nodes; i++) {
            EllipseLanes.curvature(a, b, rule.sin2[i], rule.cos2[i], rho[i], n);
        }
    }

    /** The axes' slopes change along the staple; each is taken as 1 in turn, and the bounds hold for any mixture, since they are linear in both. */
    @Override
    int cases() {
        return 2;
    }

    @Override
    void bound(double[] z, int which, int n) {
        if (which == 0) {
            quarterAt(z, n);
            System.arraycopy(a, 0, endA, 0, n);
            System.arraycopy(b, 0, endB, 0, n);
            System.arraycopy(z, 0, end, 0, n);
        }
        for (int l = 0; l < n; l++) {
            boolean narrows = across.steepest(l, end[l], length[l]) <= 0 && through.steepest(l, end[l], length[l]) <= 0;
            double widest = Math.max(endA[l], endB[l]);
            double leanest = Math.max(endB[l] / top.a[l], 1);
            double most = Math.PI / 2 * Math.sqrt(0.5 * (endA[l] * endA[l] + endB[l] * endB[l]));
            bounds.quarter[l] = most;
            bounds.oval[l] = oval(l);
            bounds.falls[l] = narrows ? Math.PI / 4 * (which == 0 ? top.a[l] : top.b[l]) / widest : -1e3;
            bounds.shortens[l] = which == 0 ? 1.633 + 0.8453 * leanest : Math.PI / 4 * leanest;
            bounds.turns[l] = 2 * most / (which == 0 ? top.a[l] : top.b[l]);
        }
    }

    /** Largest ratio of the axes at the end, at the rows above it and at the top. */
    private double oval(int l) {
        double most = Math.max(ratio(endA[l], endB[l]), ratio(top.a[l], top.b[l]));
        for (int i = 0; i < place.length; i++) {
            most = place[i][l] > end[l] ? Math.max(most, ratio(wide[i][l], narrow[i][l])) : most;
        }
        return most;
    }

    private static double ratio(double a, double b) {
        return Math.max(a / b, b / a);
    }
}
