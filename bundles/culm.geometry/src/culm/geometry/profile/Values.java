package culm.geometry.profile;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Immutable values of a profile: numbers and tables by parameter id. */
public final class Values {
    /** Nothing given. */
    public static final Values NONE = new Values(new TreeMap<>(), new TreeMap<>());
    private final Map<String, Double> numbers;
    private final Map<String, Table> tables;

    private Values(Map<String, Double> numbers, Map<String, Table> tables) {
        this.numbers = Collections.unmodifiableMap(numbers);
        this.tables = Collections.unmodifiableMap(tables);
    }

    /** The same values with one number given or changed. */
    public Values with(String id, double value) {
        Map<String, Double> copy = new TreeMap<>(numbers);
        copy.put(id, value);
        return new Values(copy, tables);
    }

    /** The same values with one table given or changed. */
    public Values with(String id, Table table) {
        Map<String, Table> copy = new TreeMap<>(tables);
        copy.put(id, table);
        return new Values(numbers, copy);
    }

    /** Whether a number is given. */
    public boolean has(String id) {
        return numbers.containsKey(id);
    }

    /** @throws IllegalArgumentException when the number is not given */
    public double number(String id) {
        Double value = numbers.get(id);
        if (value == null) {
            throw new IllegalArgumentException("no value for " + id);
        }
        return value;
    }

    /** @throws IllegalArgumentException when the table is not given */
    public Table table(String id) {
        Table table = tables.get(id);
        if (table == null) {
            throw new IllegalArgumentException("no rows for " + id);
        }
        return table;
    }

    /** All numbers, by id. */
    public Map<String, Double> numbers() {
        return numbers;
    }

    /** All tables, by id. */
    public Map<String, Table> tables() {
        return tables;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Values values && numbers.equals(values.numbers) && tables.equals(values.tables);
    }

    @Override
    public int hashCode() {
        return 31 * numbers.hashCode() + tables.hashCode();
    }

    @Override
    public String toString() {
        return numbers + " " + tables;
    }
}
