package culm.geometry.profile;

import java.util.List;

/**
 * A described table of measured places. The first column is where it was measured and ascends strictly.
 *
 * @param id       stable name in files and paths
 * @param label    the bench's word for it
 * @param columns  the columns, the place first; a column's {@code standard} is not used
 * @param fewest   fewest rows allowed
 * @param standard rows that are assumed when nothing was measured (invented, marked so where shown)
 * @param help     one or two sentences
 */
public record TableParameter(String id, String label, List<Parameter> columns, int fewest, Table standard, String help) {
    /** @throws IllegalArgumentException when the standard rows do not fit the columns */
    public TableParameter {
        columns = List.copyOf(columns);
        if (columns.size() < 2 || standard.columns() != columns.size() || standard.rows() < fewest) {
            throw new IllegalArgumentException("table " + id + " contradicts itself");
        }
    }
}
