package culm.blank.solve;

/**
 * A stretch of values that no rule stands against, from &lt;= to, with what bounds it on either side.
 *
 * @param from  lowest value, to 1e-6
 * @param to    highest value, to 1e-6
 * @param below what stands against lower values
 * @param above what stands against higher values
 */
public record Allowed(double from, double to, Bound below, Bound above) {
    /** Whether a value lies within. */
    public boolean holds(double value) {
        return value >= from && value <= to;
    }
}
