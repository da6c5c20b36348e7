package culm.figures;

/**
 * One line of text.
 *
 * @param text   what it says
 * @param x      its anchor, drawing units
 * @param y      its baseline, drawing units
 * @param anchor which point of the text x means
 * @param size   what it is for
 * @param bold   whether it is set bold
 * @param role   its colour
 * @param turn   turned around (x, y) by so many degrees, clockwise on screen; 0 for level text
 */
public record Text(String text, double x, double y, Anchor anchor, Size size, boolean bold, Role role, double turn) implements Item {
    /** @throws IllegalArgumentException when a number is not finite */
    public Text {
        if (!Double.isFinite(x + y + turn)) {
            throw new IllegalArgumentException("\"" + text + "\" has no place: " + x + ", " + y);
        }
    }

    /** The box it takes when it is level. */
    public Box box(TextMeasure measure) {
        double width = measure.width(text, size, bold);
        double left = anchor == Anchor.START ? x : anchor == Anchor.END ? x - width : x - width / 2;
        return new Box(left, y - measure.ascent(size), width, measure.line(size));
    }
}
