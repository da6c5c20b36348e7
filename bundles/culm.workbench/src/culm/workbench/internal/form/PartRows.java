package culm.workbench.internal.form;

import java.util.List;

import culm.design.edit.RowEntry;
import culm.model.GougePart;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.model.StaplePart;
import culm.model.TableData;
import culm.model.text.Cells;

/** The rows of a table as they stand in a part. */
public final class PartRows {
    private PartRows() {
    }

    /**
     * Reads rows.
     *
     * @param part the part itself, not a link
     * @param path such as {@code shape.places} or {@code inside.places}
     * @return the rows; empty when there is no such table
     */
    public static List<RowEntry> of(Part part, String path) {
        TableData table = table(part, path.substring(0, path.indexOf('.')), path.substring(path.indexOf('.') + 1));
        return table == null ? List.of() : table.getRows().stream()
                .map(r -> new RowEntry(r.getId() == null ? "" : r.getId(), r.getCells() == null ? Cells.NONE : r.getCells())).toList();
    }

    private static TableData table(Part part, String word, String name) {
        if (word.equals("inside")) {
            return part instanceof ShapePart shape ? shape.getInside() : null;
        }
        ProfileData profile = part instanceof StaplePart staple ? staple.getProfile()
                : part instanceof GougePart gouge ? word.equals("gougeEnd") ? gouge.getEndProfile() : gouge.getProfile()
                : part instanceof ShapePart shape ? shape.getProfile() : null;
        return profile == null ? null : profile.getTables().stream().filter(t -> name.equals(t.getName())).findFirst().orElse(null);
    }
}
