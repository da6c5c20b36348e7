package culm.design.edit;

import culm.model.text.Cells;

/**
 * A row of measured places as it shall be.
 *
 * @param id    the id of the row it was; empty for a new row
 * @param cells its numbers by column
 */
public record RowEntry(String id, Cells cells) {
    /** A new row. */
    public static RowEntry of(Cells cells) {
        return new RowEntry("", cells);
    }
}
