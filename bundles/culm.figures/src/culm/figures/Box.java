package culm.figures;

/** A rectangle in drawing units: left, top, width and height, y downwards. */
public record Box(double x, double y, double width, double height) {
    /** @throws IllegalArgumentException when not finite or negative in size */
    public Box {
        if (!Double.isFinite(x + y + width + height) || width < 0 || height < 0) {
            throw new IllegalArgumentException("not a box: " + x + " " + y + " " + width + " " + height);
        }
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    /** Whether both share more than an edge. */
    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** The box moved. */
    public Box moved(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }
}
