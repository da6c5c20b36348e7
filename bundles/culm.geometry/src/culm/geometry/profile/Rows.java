package culm.geometry.profile;

import java.util.ArrayList;
import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/** The checks every table of measured places has to pass. */
public final class Rows {
    private Rows() {
    }

    /** All that is wrong with a table's rows; {@code table} may be null when it is missing. Paths look like {@code places[2].width}. */
    public static List<GeometryException> problems(TableParameter described, Table table) {
        if (table == null || table.rows() < described.fewest()) {
            return List.of(new GeometryException(described.id(), described.label() + ": at least " + described.fewest() + " rows are needed, not "
                    + (table == null ? 0 : table.rows()) + "."));
        }
        if (table.columns() != described.columns().size()) {
            return List.of(new GeometryException(described.id(), described.label() + ": a row needs " + described.columns().size() + " numbers."));
        }
        List<GeometryException> found = new ArrayList<>();
        for (int row = 0; row < table.rows(); row++) {
            for (int c = 0; c < table.columns(); c++) {
                Parameter column = described.columns().get(c);
                int at = row;
                column.refusal(table.cell(row, c)).ifPresent(
                        why -> found.add(new GeometryException(path(described.id(), at, column.id()), "Row " + (at + 1) + ": " + why)));
            }
            if (row > 0 && table.cell(row, 0) <= table.cell(row - 1, 0)) {
                Parameter place = described.columns().get(0);
                found.add(new GeometryException(path(described.id(), row, place.id()), "Row " + (row + 1) + " is out of order: " + place.label() + " "
                        + Told.given(table.cell(row, 0)) + " comes after " + Told.given(table.cell(row - 1, 0)) + "."));
            }
        }
        return found;
    }

    /** Path of a cell below its part, rows from 0. */
    public static String path(String table, int row, String column) {
        return table + "[" + row + "]." + column;
    }
}
