package culm.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Collects the items of a drawing in the order of painting. */
public final class Pen {
    private final List<Item> items = new ArrayList<>();

    public Pen add(Item item) {
        items.add(item);
        return this;
    }

    /** Paints a path; an empty one is left out. */
    public Pen shape(Path path, Style style) {
        return path.isEmpty() ? this : add(new Shape(path, style));
    }

    /** A straight line. */
    public Pen line(double x1, double y1, double x2, double y2, Role role, double width) {
        return shape(Path.line(x1, y1, x2, y2), Style.line(role, width));
    }

    /** A level text. */
    public Pen text(String text, double x, double y, Anchor anchor, Size size, Role role) {
        return add(new Text(text, x, y, anchor, size, false, role, 0));
    }

    /** A level bold text. */
    public Pen bold(String text, double x, double y, Anchor anchor, Size size, Role role) {
        return add(new Text(text, x, y, anchor, size, true, role, 0));
    }

    /** A group. */
    public Pen group(Part part, String title, Consumer<Pen> draw) {
        return group(part, title, Optional.empty(), draw);
    }

    /** A group of which nothing outside {@code clip} is painted. */
    public Pen group(Part part, String title, Optional<Box> clip, Consumer<Pen> draw) {
        Pen inner = new Pen();
        draw.accept(inner);
        return inner.items.isEmpty() ? this : add(new Group(part, title, 0, 0, clip, inner.items));
    }

    /** Everything so far. */
    public List<Item> items() {
        return List.copyOf(items);
    }

    /** Everything so far as a drawing. */
    public Drawing drawing(double width, double height, String title, String description) {
        return new Drawing(width, height, title, description, items);
    }
}
