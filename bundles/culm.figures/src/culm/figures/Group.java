package culm.figures;

import java.util.List;
import java.util.Optional;

/**
 * Items that belong together.
 *
 * @param part  what they show
 * @param title a few words for people; may be empty
 * @param dx    the whole group is moved right by so much, drawing units
 * @param dy    and down by so much
 * @param clip  nothing outside is painted; in the group's own coordinates, before the move
 * @param items the items, painted in order
 */
public record Group(Part part, String title, double dx, double dy, Optional<Box> clip, List<Item> items) implements Item {
    public Group {
        items = List.copyOf(items);
    }
}
