package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;

import culm.workbench.internal.numbers.NumberForm;

/**
 * Rows of numbers from a spreadsheet: lines, with tabs or semicolons (or blanks) between cells, point or comma. Lines of
 * words, such as a heading, are left out only at the top.
 */
final class PastedRows {
    private PastedRows() {
    }

    /** {@return whether a text from the clipboard is more than one number} */
    static boolean isTable(String text) {
        String stripped = text.strip();
        return stripped.indexOf('\n') >= 0 || stripped.indexOf('\t') >= 0 || stripped.indexOf(';') >= 0;
    }

    /**
     * Reads rows.
     *
     * @param text what was copied
     * @param forms how each column is read
     * @return the rows; a shorter row has fewer cells
     * @throws NumberFormatException when a cell is no number; names line and cell
     */
    static List<double[]> read(String text, List<NumberForm> forms) {
        List<double[]> rows = new ArrayList<>();
        String[] lines = text.split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.isEmpty() || rows.isEmpty() && line.chars().noneMatch(Character::isDigit)) {
                continue;
            }
            rows.add(row(line, i + 1, forms));
        }
        if (rows.isEmpty()) {
            throw new NumberFormatException("There are no numbers in what was copied. Nothing was pasted.");
        }
        return rows;
    }

    private static double[] row(String line, int number, List<NumberForm> forms) {
        String[] cells = line.indexOf('\t') >= 0 ? line.split("\t") : line.indexOf(';') >= 0 ? line.split(";") : line.split("\\s+");
        if (cells.length > forms.size()) {
            throw new NumberFormatException("Line " + number + " has " + cells.length + " numbers, the table " + forms.size() + " columns. Nothing was pasted.");
        }
        double[] row = new double[cells.length];
        for (int c = 0; c < cells.length; c++) {
            try {
                row[c] = forms.get(c).parse(cells[c]);
            } catch (NumberFormatException e) {
                throw new NumberFormatException("Line " + number + ": " + e.getMessage() + " Nothing was pasted.");
            }
        }
        return row;
    }
}
