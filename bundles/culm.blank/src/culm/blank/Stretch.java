package culm.blank;

/**
 * A stretch of heights.
 *
 * @param from lower end, mm
 * @param to   upper end, mm, at least {@code from}
 */
public record Stretch(double from, double to) {
}
