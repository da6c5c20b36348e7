package culm.explore.internal.fast;

import culm.blank.Inputs;

/**
 * Decides lane by lane whether the height that was found is the closing: the parts overlap, edges and thickness exist all along, and G falls strictly
 * from there (and, below, stays positive), so that no other place was passed by. What is not proven is {@link State#UNSURE}.
 */
final class Proof {
    /** Largest |G| left before the last Newton step, mm: what it leaves is a hundred times smaller or less. */
    static final double LEFT = 1e-6;
    private static final double LEAST_THICKNESS = 1e-3;
    private static final double TOUCH = 1e-7;
    private final SeamLanes seam;
    private final Ranges ranges;
    private final double[] length;
    private final double[] tie;
    private final double[] folded;
    private final double oval;
    private final double[] end = new double[Columns.SIZE];
    private final double[] rises = new double[Columns.SIZE];
    private final boolean[] sound = new boolean[Columns.SIZE];
    private final double[] topWidth = new double[Columns.SIZE];
    private final double[] topSlope = new double[Columns.SIZE];

    Proof(Columns columns, SeamLanes seam, double oval) {
        this.oval = oval;
        this.seam = seam;
        ranges = new Ranges(columns);
        length = columns.of(Inputs.STAPLE_LENGTH);
        tie = columns.of(Inputs.TIE_LENGTH);
        folded = columns.of(Inputs.FOLDED_LENGTH);
    }

    /** End of the cane, mm; set by {@link #top}. */
    double[] end() {
        return end;
    }

    /** Takes in what the seam says at the staple's top, where the blade is widest. */
    void top(int n) {
        for (int l = 0; l < n; l++) {
            end[l] = tie[l] - folded[l];
        }
        seam.neededRises(end, rises, n);
        ranges.check(sound, n);
        for (int l = 0; l < n; l++) {
            sound[l] &= end[l] >= 0 && end[l] < length[l] && length[l] < tie[l] && covers(seam.width, l)
                    && (seam.edge.inside() == null || covers(seam.edge.inside(), l)) && gouge(l) && edge(seam.edge, l)
                    && seam.staple.bounds.oval[l] <= oval && Math.abs(seam.bend.moved[l]) < BendLanes.MOVED;
            topWidth[l] = seam.width.width[l];
            topSlope[l] = seam.edge.slope[l];
        }
    }

    private boolean covers(WidthLanes width, int l) {
        return width.from(l) <= tie[l] - length[l] && width.to(l) >= tie[l] - end[l];
    }

    private boolean gouge(int l) {
        double k = seam.gouge.offset[l] / seam.gouge.circle[l];
        return seam.gouge.circle[l] > 0 && k * k <= EdgeLanes.MOST_OFFSET && seam.gouge.bark[l] - seam.gouge.offset[l] - seam.gouge.circle[l] > LEAST_THICKNESS;
    }

    /** Whether the corner that counts exists, with cane left at it, within the angles that the series serve. */
    static boolean edge(EdgeLanes edge, int l) {
        return edge.angle[l] <= BendLanes.WIDEST && edge.above[l] > 0 && edge.thickness[l] > LEAST_THICKNESS;
    }

    /** Whether all numbers of a lane exist at the staple's top, so that its course can be looked at. */
    boolean sound(int l) {
        return sound[l];
    }

    /** The state of a lane, after the seam was laid at z, where the last step will start from. */
    byte state(int l, double topOpen, double z, double open, double slope) {
        if (!sound[l] || !(rises[l] < 0)) {
            return State.UNSURE;
        }
        double top = tie[l] - length[l];
        double bottom = tie[l] - end[l];
        boolean falls = falls(l, top, bottom);
        if (topOpen > TOUCH) {
            return falls || noWider(l, topWidth[l], top, bottom) ? State.NEVER : State.UNSURE;
        }
        if (topOpen > -TOUCH) {
            return State.UNSURE;
        }
        if (z <= end[l]) {
            return falls && open < -TOUCH ? State.EVERYWHERE : State.UNSURE;
        }
        if (!(Math.abs(open) < LEFT && slope < 0 && Math.abs(seam.bend.moved[l]) < BendLanes.MOVED)) {
            return State.UNSURE;
        }
        double here = tie[l] - z;
        boolean once = falls || falls(l, top, here) && noWider(l, seam.width.width[l], here, bottom);
        double closes = z - open / slope;
        return once && closes > end[l] && closes <= length[l] ? State.CLOSES : State.UNSURE;
    }

    /** Whether G falls strictly between two distances from the fold: the cane does not widen away from the fold faster than what is needed grows. */
    private boolean falls(int l, double from, double to) {
        double widens = Math.max(seam.width.steepest(l, from, to), seam.edge.inside() == null ? Double.NEGATIVE_INFINITY : seam.edge.inside().steepest(l, from, to));
        if (widens <= 0) {
            return true;
        }
        double most = 1.2 * Math.max(topSlope[l], seam.edge.slope[l]);
        return seam.toScale() && noWider(l, topWidth[l], from, to) && seam.growth(l) * most * widens < -rises[l];
    }

    /** Whether the cane is nowhere wider than a width on a piece whose lower end it has at {@code from}. */
    private boolean noWider(int l, double width, double from, double to) {
        return seam.edge.inside() == null && seam.width.widestRow(l, from, to) <= width && seam.width.end(l, to) <= width;
    }
}
