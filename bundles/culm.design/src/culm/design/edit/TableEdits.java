package culm.design.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;

import org.eclipse.emf.common.util.EList;

import culm.model.Column;
import culm.model.ModelFactory;
import culm.model.Row;
import culm.model.TableData;
import culm.model.text.Ids;

/** Changes rows of a table and keeps the ids of those that stay. */
final class TableEdits {
    private TableEdits() {
    }

    /** Makes a table hold just these rows, in this order. */
    static void replace(TableData table, List<RowEntry> wanted, RandomGenerator random) {
        Set<String> taken = new HashSet<>();
        table.getRows().forEach(row -> taken.add(row.getId()));
        List<Row> rows = new ArrayList<>();
        Set<Row> used = new HashSet<>();
        for (RowEntry entry : wanted) {
            Row row = table.getRows().stream().filter(r -> entry.id().equals(r.getId()) && used.add(r)).findFirst().orElseGet(() -> fresh(taken, random));
            if (!entry.cells().equals(row.getCells())) {
                row.setCells(entry.cells());
            }
            rows.add(row);
        }
        EList<Row> now = table.getRows();
        now.removeIf(row -> !rows.contains(row));
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            int at = now.indexOf(row);
            if (at < 0) {
                now.add(i, row);
            } else if (at != i) {
                now.move(i, at);
            }
        }
    }

    static Column column(TableData table, String name) {
        return table.getColumns().stream().filter(c -> name.equals(c.getName())).findFirst().orElseGet(() -> {
            Column made = ModelFactory.eINSTANCE.createColumn();
            made.setName(name);
            table.getColumns().add(made);
            return made;
        });
    }

    private static Row fresh(Set<String> taken, RandomGenerator random) {
        Row row = ModelFactory.eINSTANCE.createRow();
        row.setId(Ids.draw(taken, random));
        taken.add(row.getId());
        return row;
    }
}
