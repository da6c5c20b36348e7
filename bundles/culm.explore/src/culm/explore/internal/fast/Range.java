package culm.explore.internal.fast;

/** The values that a varied number can take, low &lt;= high; infinite where there is no bound. */
public record Range(double low, double high) {
    /** No bound. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
}
