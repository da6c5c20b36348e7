package culm.blank;

/**
 * A 95 % give or take around a value.
 *
 * @param low   lower end
 * @param high  upper end; where {@code open} is set, the highest value that can still be told
 * @param half  half of the width of the band, before anything was cut off
 * @param open  true when the upper end lies beyond what can be computed: the sides may not close at all
 */
public record Band(double low, double high, double half, boolean open) {
    static Band around(double value, double half) {
        return new Band(value - half, value + half, half, false);
    }
}
