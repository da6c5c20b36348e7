package culm.explore.internal.fast;

/** Outsides of staples, a block at a time: what laying a blade around them needs at one height in every lane. */
abstract class StapleLanes {
    final BendRule rule;
    /** Radius of curvature at the rule's nodes, [node][lane], mm. */
    final double[][] rho;
    /** Quarter of the perimeter, mm, and its slope along z. */
    final double[] quarter = new double[Columns.SIZE];
    final double[] slope = new double[Columns.SIZE];
    /** Bounds for all heights from one given to the top, see {@link #bound}. */
    final Bounds bounds = new Bounds();

    StapleLanes(BendRule rule) {
        this.rule = rule;
        this.rho = new double[rule.nodes][Columns.SIZE];
    }

    /** Takes in the columns once for a block. */
    abstract void prepare(int n);

    /** Sets {@link #rho}, {@link #quarter} and {@link #slope} at heights z. */
    abstract void at(double[] z, int n);

    /** Sets {@link #quarter} and {@link #slope} only. */
    abstract void quarterAt(double[] z, int n);

    /** How many slopes of the outside have to be looked at, each with bounds of its own. With more than one they are taken as 1, not as they are. */
    int cases() {
        return 1;
    }

    /** Sets {@link #bounds} for the heights from z to the staple's top. @param which one of {@link #cases} */
    abstract void bound(double[] z, int which, int n);

    /** Proven bounds over a range of heights, with S(theta) the outside's length from the narrow axis to theta. */
    static final class Bounds {
        /** How fast the quarter perimeter falls at least; not positive: it may rise. */
        final double[] falls = new double[Columns.SIZE];
        /** Upper bound of -dS/dz over theta and z. */
        final double[] shortens = new double[Columns.SIZE];
        /** Upper bound of the integral of |d rho / dz| over theta. */
        final double[] turns = new double[Columns.SIZE];
        /** Upper bound of the quarter perimeter. */
        final double[] quarter = new double[Columns.SIZE];
        /** Largest ratio of the axes, either way. */
        final double[] oval = new double[Columns.SIZE];
    }
}
