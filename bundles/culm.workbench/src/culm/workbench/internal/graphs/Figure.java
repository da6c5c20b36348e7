package culm.workbench.internal.graphs;

import java.util.List;
import java.util.Optional;

import culm.figures.Drawing;

/** A drawing of the editor that can be copied, written to a file and printed. */
public interface Figure {
    /** {@return what it is called, a few words} */
    String title();

    /** {@return as it is on the screen; empty when there is nothing to draw} */
    Optional<Drawing> onScreen();

    /**
     * As it is for paper.
     *
     * @param enlargement how many times larger than the real thing
     * @return the drawing; empty when there is nothing to draw
     */
    Optional<Drawing> onPaper(double enlargement);

    /** {@return its numbers} */
    Table table();

    /**
     * Numbers as rows.
     *
     * @param columns heads, with units
     * @param rows the rows
     */
    record Table(List<String> columns, List<double[]> rows) {
        /** {@return as text for a spreadsheet: tabs between cells, points} */
        public String text() {
            StringBuilder text = new StringBuilder(String.join("\t", columns)).append('\n');
            for (double[] row : rows) {
                for (int i = 0; i < row.length; i++) {
                    text.append(i == 0 ? "" : "\t").append(culm.model.text.Numbers.format(Math.rint(row[i] * 1e6) / 1e6));
                }
                text.append('\n');
            }
            return text.toString();
        }
    }
}
