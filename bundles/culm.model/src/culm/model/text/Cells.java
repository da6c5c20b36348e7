package culm.model.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The numbers of one row of measured places, by the name of their column, in the order they were given. Immutable; a
 * column without a number is simply not in it.
 */
public final class Cells {
    /** A row without numbers. */
    public static final Cells NONE = new Cells(Map.of());

    private final Map<String, Double> values;

    private Cells(Map<String, Double> values) {
        this.values = values;
    }

    /**
     * A row of the given numbers.
     *
     * @param values numbers by column; copied, its order is kept
     * @return the row
     */
    public static Cells of(Map<String, Double> values) {
        return new Cells(Collections.unmodifiableMap(new LinkedHashMap<>(values)));
    }

    /**
     * This row with one number set; a new column comes last.
     *
     * @param column its name
     * @param value its number
     * @return the new row
     */
    public Cells with(String column, double value) {
        var copy = new LinkedHashMap<>(values);
        copy.put(column, value);
        return new Cells(Collections.unmodifiableMap(copy));
    }

    /**
     * The number in a column.
     *
     * @param column its name
     * @return the number, or empty when this row has none there
     */
    public OptionalDouble get(String column) {
        Double value = values.get(column);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** {@return all numbers by column, in order, unmodifiable} */
    public Map<String, Double> asMap() {
        return values;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Cells cells && values.equals(cells.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
