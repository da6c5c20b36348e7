package culm.geometry.shape;

/** Width of the cane as cut, over the distance s from the fold; mm. */
public interface ShapeWidth {
    /** Smallest s that the data covers. */
    default double from() {
        return 0;
    }

    /** Largest s that the data covers. */
    double to();

    /** Full width at s, from() &lt;= s &lt;= to(). @throws IllegalArgumentException elsewhere: nothing is extrapolated */
    double at(double s);

    /** Places where the width is not smooth, ascending. */
    default double[] breaks() {
        return new double[0];
    }
}
