package culm.workbench.internal.explore;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

import culm.explore.VariantTable;
import culm.explore.VariantTable.Result;

/**
 * Which rows are shown, and in what order.
 *
 * @param column what is sorted by: an axis, or after the axes turns left, sides close at, open at the top; empty for the order they were made in
 * @param falling the largest first
 * @param kind all, those that work, those that fail, or those that fail one rule
 * @param rule that rule's id; else empty
 * @param narrowed the column that is held between two ends, counted as above
 * @param from its lower end; NaN for none
 * @param to its upper end; NaN for none
 */
record RowOrder(OptionalInt column, boolean falling, Kind kind, String rule, int narrowed, double from, double to) {
    static final RowOrder ALL = new RowOrder(OptionalInt.empty(), false, Kind.ALL, "", 0, Double.NaN, Double.NaN);

    /** Which rows. */
    enum Kind {
        ALL, WORKS, FAILS, FAILS_RULE
    }

    RowOrder sorted(int by, boolean down) {
        return new RowOrder(OptionalInt.of(by), down, kind, rule, narrowed, from, to);
    }

    RowOrder filtered(Kind which, String id, int held, double low, double high) {
        return new RowOrder(column, falling, which, id, held, low, high);
    }

    /** Numbers of the rows. */
    int[] of(VariantTable table) {
        IntPredicate keep = row -> kept(table, row);
        if (column.isEmpty()) {
            return java.util.stream.IntStream.range(0, table.rows()).filter(keep).toArray();
        }
        int axes = table.head().axes().size();
        int by = column.getAsInt();
        return by < axes ? table.sorted(keep, by, falling) : table.sorted(keep, result(by - axes), falling);
    }

    private boolean kept(VariantTable table, int row) {
        boolean right = switch (kind) {
            case ALL -> true;
            case WORKS -> table.works(row);
            case FAILS -> !table.works(row);
            case FAILS_RULE -> table.failed(row).contains(rule);
        };
        if (!right || Double.isNaN(from) && Double.isNaN(to)) {
            return right;
        }
        double value = value(table).applyAsDouble(row);
        return (Double.isNaN(from) || value >= from) && (Double.isNaN(to) || value <= to);
    }

    private IntToDoubleFunction value(VariantTable table) {
        int axes = table.head().axes().size();
        return narrowed < axes ? row -> table.value(row, narrowed) : row -> table.result(row, result(narrowed - axes));
    }

    /** The results in the order of their columns. */
    static Result result(int number) {
        return switch (number) {
            case 0 -> Result.TURNS_LEFT;
            case 1 -> Result.CLOSES_AT;
            default -> Result.OPEN_AT_TOP;
        };
    }
}
