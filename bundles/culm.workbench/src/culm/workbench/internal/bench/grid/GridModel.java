package culm.workbench.internal.bench.grid;

import java.util.List;
import java.util.Optional;

/** What a grid shows and how it changes. */
public interface GridModel {
    /** A cell. */
    record Place(int row, int column) {
    }

    /** {@return the columns, left to right} */
    List<GridColumn> columns();

    /** {@return how many rows are shown, an empty one to type into included} */
    int rows();

    /** The text of a cell; empty where there is none. */
    String text(int row, int column);

    /** Why a cell should be looked at again; empty when nothing is in doubt. */
    Optional<String> doubt(int row, int column);

    /** Whether a row is not used and stands back. */
    boolean quiet(int row);

    /** {@return whether it may only be looked at} */
    default boolean locked() {
        return false;
    }

    /**
     * Takes what was typed into a cell.
     *
     * @return why it cannot be taken, one sentence; empty when it was
     */
    Optional<String> enter(int row, int column, String typed);

    /**
     * Takes a pasted table from a cell on.
     *
     * @return empty when the text is no table; otherwise what to say of it, which may be nothing
     */
    Optional<String> paste(int row, int column, String text);

    /** Takes a row away. */
    void remove(int row);

    /**
     * Shows the rows in the order of a column, and in the other order when they are in it already; what is shown stays as it is.
     *
     * @return where the row stands now; -1 when rows are not sorted here
     */
    default int sort(int column, int row) {
        return -1;
    }

    /** What stands behind the words above a column to say that its order holds; may be empty. */
    default String order(int column) {
        return "";
    }

    /** Where Enter goes on from a cell. */
    Place next(int row, int column);
}
