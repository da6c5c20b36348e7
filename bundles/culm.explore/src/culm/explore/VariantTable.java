package culm.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Variants held in memory, for looking at: sort, filter, differences from a pinned row. For more rows than can be looked at, write them to
 * a file instead.
 */
public final class VariantTable implements VariantSink {
    /** Most rows that a table takes. */
    public static final int MOST_ROWS = 1_000_000;
    private final List<VariantBlock> blocks = new ArrayList<>();
    private VariantHead head;
    private int rows;
    private int most;

    /** Results that rows can be sorted and compared by. */
    public enum Result {
        CLOSES_AT,
        TURNS_LEFT,
        OPEN_AT_TOP
    }

    /** @throws IllegalArgumentException when more rows are planned than a table takes */
    @Override
    public void begin(VariantHead planned) {
        if (planned.rows() > MOST_ROWS) {
            throw new IllegalArgumentException("A table takes at most " + MOST_ROWS + " rows, not " + planned.rows() + ".");
        }
        head = planned;
    }

    @Override
    public void rows(VariantBlock block) {
        most = Math.max(most, block.rows());
        blocks.add(block);
        rows += block.rows();
    }

    /** What the columns are. */
    public VariantHead head() {
        return head;
    }

    /** How many rows are there. */
    public int rows() {
        return rows;
    }

    private VariantBlock block(int row) {
        return blocks.get(row / most);
    }

    /** The value of an axis in a row; for parts the choice's index, NaN for the base's own. */
    public double value(int row, int axis) {
        return block(row).values()[axis][row % most];
    }

    /** A result of a row, NaN where there is none. */
    public double result(int row, Result result) {
        VariantBlock block = block(row);
        int r = row % most;
        return switch (result) {
            case CLOSES_AT -> block.closesAt()[r];
            case TURNS_LEFT -> block.turnsLeft()[r];
            case OPEN_AT_TOP -> block.openAtTop()[r];
        };
    }

    /** Whether a row fails no rule. */
    public boolean works(int row) {
        return block(row).failed()[row % most] == 0;
    }

    /** Ids of the rules that a row fails. */
    public List<String> failed(int row) {
        return block(row).failed(row % most, head.rules());
    }

    /** How far a row's result lies above the pinned row's; NaN where either has none. */
    public double difference(int row, int pinned, Result result) {
        return result(row, result) - result(pinned, result);
    }

    /** Numbers of the rows that a filter keeps, sorted by a result; rows without it last. */
    public int[] sorted(IntPredicate keep, Result by, boolean falling) {
        return sorted(keep, row -> result(row, by), falling);
    }

    /** The same by the values of an axis. */
    public int[] sorted(IntPredicate keep, int axis, boolean falling) {
        return sorted(keep, row -> value(row, axis), falling);
    }

    private int[] sorted(IntPredicate keep, IntToDoubleFunction by, boolean falling) {
        Comparator<Integer> values = Comparator.comparingDouble(by::applyAsDouble);
        Comparator<Integer> missing = Comparator.comparing(row -> Double.isNaN(by.applyAsDouble(row)));
        return IntStream.range(0, rows).filter(keep).boxed().sorted(missing.thenComparing(falling ? values.reversed() : values)).mapToInt(Integer::intValue).toArray();
    }
}
