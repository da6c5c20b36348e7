package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import culm.design.edit.RowEntry;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.TableParameter;
import culm.model.problem.FileProblemException;
import culm.model.text.Cells;
import culm.workbench.internal.numbers.NumberForm;

/** Changes the rows of one table of measured places, each change as one command. */
final class RowEdits {
    private final FormContext context;
    private final String path;
    private final TableParameter table;

    RowEdits(FormContext context, FormPlan.Measured item) {
        this.context = context;
        this.path = item.path();
        this.table = item.table();
    }

    List<RowEntry> rows() throws FileProblemException {
        return context.rows(path);
    }

    private void set(List<RowEntry> rows, String label) throws FileProblemException {
        context.change(edits -> edits.setRows(path, rows), label);
    }

    /** {@return how numbers of a column are shown and typed now} */
    NumberForm form(Parameter column) {
        return NumberForm.of(column.quantity(), context.units().now(), 0);
    }

    /** A row half-way to the next one, or beyond the last. */
    void add(int after) throws FileProblemException {
        List<RowEntry> rows = new ArrayList<>(rows());
        Cells cells = Cells.NONE;
        for (Parameter column : table.columns()) {
            double a = value(rows, after, column);
            double b = after + 1 < rows.size() ? value(rows, after + 1, column) : a + (column == table.columns().get(0) ? 2 : 0);
            cells = cells.with(column.id(), Math.rint((a + b) / 2 * 100) / 100);
        }
        rows.add(Math.min(rows.size(), after + 1), RowEntry.of(cells));
        set(rows, "add a row");
    }

    private static double value(List<RowEntry> rows, int row, Parameter column) {
        return row < 0 || row >= rows.size() ? column.min() : rows.get(row).cells().get(column.id()).orElse(column.min());
    }

    void remove(int row) throws FileProblemException {
        List<RowEntry> rows = new ArrayList<>(rows());
        rows.remove(row);
        set(rows, "remove a row");
    }

    void sort() throws FileProblemException {
        String place = table.columns().get(0).id();
        List<RowEntry> rows = new ArrayList<>(rows());
        rows.sort(Comparator.comparingDouble(r -> r.cells().get(place).orElse(Double.MAX_VALUE)));
        set(rows, "sort the rows");
    }

    /** Writes pasted cells from a row and column on; rows that are not there yet are added. When a whole table is pasted into its first cell it takes the table's place. */
    void paste(int row, int column, List<double[]> pasted) throws FileProblemException {
        boolean whole = row == 0 && column == 0 && pasted.size() > 1 && pasted.stream().allMatch(r -> r.length == table.columns().size());
        List<RowEntry> rows = whole ? new ArrayList<>(rows().subList(0, Math.min(pasted.size(), rows().size()))) : new ArrayList<>(rows());
        for (int i = 0; i < pasted.size(); i++) {
            int at = row + i;
            RowEntry entry = at < rows.size() ? rows.get(at) : RowEntry.of(Cells.NONE);
            Cells cells = entry.cells();
            for (int c = 0; c < pasted.get(i).length && column + c < table.columns().size(); c++) {
                cells = cells.with(table.columns().get(column + c).id(), pasted.get(i)[c]);
            }
            RowEntry next = new RowEntry(entry.id(), cells);
            if (at < rows.size()) {
                rows.set(at, next);
            } else {
                rows.add(next);
            }
        }
        requireWhole(rows);
        set(rows, "paste " + pasted.size() + (pasted.size() == 1 ? " row" : " rows"));
    }

    private void requireWhole(List<RowEntry> rows) {
        for (int i = 0; i < rows.size(); i++) {
            for (Parameter column : table.columns()) {
                if (rows.get(i).cells().get(column.id()).isEmpty()) {
                    throw new NumberFormatException("Row " + (i + 1) + " would have no " + column.label() + ". Nothing was pasted.");
                }
                java.util.Optional<String> refused = form(column).refuse(column, rows.get(i).cells().get(column.id()).getAsDouble());
                if (refused.isPresent()) {
                    throw new NumberFormatException("Row " + (i + 1) + ": " + refused.get() + " Nothing was pasted.");
                }
            }
        }
    }
}
