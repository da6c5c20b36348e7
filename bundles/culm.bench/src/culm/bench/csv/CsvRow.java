package culm.bench.csv;

import java.util.List;

/** One row of a table: the line of the file it begins on, from 1, and its cells, trimmed. */
public record CsvRow(int line, List<String> cells) {
    /** A cell; empty where the row is shorter. */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
