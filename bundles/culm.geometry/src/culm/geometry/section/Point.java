package culm.geometry.section;

/**
 * A point of a plane drawing; in a cross-section x runs across the blades and y through the opening.
 *
 * @param x mm
 * @param y mm
 */
public record Point(double x, double y) {
}
