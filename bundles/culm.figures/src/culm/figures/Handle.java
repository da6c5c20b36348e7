package culm.figures;

/**
 * Something to take hold of: a round handle with its centre at (x, y).
 *
 * @param id     the mark's name
 * @param title  what it moves, for people
 * @param x      centre, drawing units
 * @param y      centre, drawing units
 * @param role   colour of its ring
 */
public record Handle(String id, String title, double x, double y, Role role) implements Item {
    /** Radius, drawing units. */
    public static final double RADIUS = 5;
    /** Width of the ring, drawing units. */
    public static final double RING = 1.8;

    /** @throws IllegalArgumentException when a number is not finite */
    public Handle {
        if (!Double.isFinite(x + y)) {
            throw new IllegalArgumentException(id + " has no place: " + x + ", " + y);
        }
    }

    /** What is painted for it, so that every back end paints the same. */
    public Shape shape() {
        return new Shape(Path.circle(x, y, RADIUS), Style.fill(Role.PAPER).edged(role, RING));
    }
}
