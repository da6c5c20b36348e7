package culm.explore.internal.fast;

/** Widths of cane, a block at a time. */
abstract class WidthLanes {
    /** Full width at the places last asked for, mm, and its slope over the distance from the fold. */
    final double[] width = new double[Columns.SIZE];
    final double[] slope = new double[Columns.SIZE];

    /** Takes in the columns once for a block. */
    abstract void prepare(int n);

    /** Sets width and slope at distances s from the fold; outside the rows the nearest piece goes on (the caller leaves such lanes to the reference). */
    abstract void at(double[] s, int n);

    /** First and last place that the data covers. */
    abstract double from(int lane);

    abstract double to(int lane);

    /** Upper bound of the slope between two places, from &lt;= to, within the data. */
    abstract double steepest(int lane, double from, double to);

    /** Width at one place of one lane. */
    abstract double end(int lane, double at);

    /** Largest width at the rows strictly between two places; negative infinity without any. */
    abstract double widestRow(int lane, double from, double to);
}
