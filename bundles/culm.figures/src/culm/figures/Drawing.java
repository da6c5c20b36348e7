package culm.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing as data. One drawing unit is 1/96 inch on paper and one pixel on a screen at 100 %; x to the right, y downwards.
 *
 * @param width       drawing units
 * @param height      drawing units
 * @param title       what it is, a few words
 * @param description what it shows, for those who cannot see it; may be empty
 * @param items       painted in order
 */
public record Drawing(double width, double height, String title, String description, List<Item> items) {
    /** Drawing units to a mm on paper. */
    public static final double UNITS_PER_MM = 96 / 25.4;

    /** @throws IllegalArgumentException when the size is not positive */
    public Drawing {
        if (!(width > 0 && height > 0 && Double.isFinite(width + height))) {
            throw new IllegalArgumentException("a drawing needs a size, not " + width + " by " + height);
        }
        items = List.copyOf(items);
    }

    /** This drawing as a group at a place in a larger one. */
    public Group at(double x, double y) {
        return new Group(Part.PAGE, title, x, y, java.util.Optional.empty(), items);
    }

    /** Every handle at its place in the drawing, in the order of painting. */
    public List<Handle> handles() {
        List<Handle> all = new ArrayList<>();
        flat().stream().filter(Handle.class::isInstance).map(Handle.class::cast).forEach(all::add);
        return all;
    }

    /** Every shape, text and handle at its place in the drawing, groups resolved except for their clips. */
    public List<Item> flat() {
        List<Item> all = new ArrayList<>();
        collect(items, 0, 0, all);
        return all;
    }

    private static void collect(List<Item> items, double dx, double dy, List<Item> all) {
        for (Item item : items) {
            if (item instanceof Group g) {
                collect(g.items(), dx + g.dx(), dy + g.dy(), all);
            } else if (item instanceof Text t) {
                all.add(new Text(t.text(), t.x() + dx, t.y() + dy, t.anchor(), t.size(), t.bold(), t.role(), t.turn()));
            } else if (item instanceof Handle h) {
                all.add(new Handle(h.id(), h.title(), h.x() + dx, h.y() + dy, h.role()));
            } else if (item instanceof Shape s) {
                all.add(dx == 0 && dy == 0 ? s : new Shape(s.path().moved(dx, dy), s.style()));
            }
        }
    }
}
