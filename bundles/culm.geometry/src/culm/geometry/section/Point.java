package culm.geometry.section;

/** A point of a cross-section, mm: x across the blades, y through the opening. */
public record Point(double x, double y) {
}
