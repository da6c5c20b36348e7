package culm.bench.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which column of a table holds what, from the words of its head: case, units in brackets and a number behind ("length (mm)", "length 2") do
 * not count.
 *
 * @param names   for each column what it holds; empty where its word is not known
 * @param unknown words that are not known
 */
public record Columns(List<String> names, List<String> unknown) {
    /**
     * @param head  cells of the head
     * @param known words by what they mean, all lower case
     */
    public static Columns of(List<String> head, Map<String, String> known) {
        List<String> names = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (String cell : head) {
            String name = known.getOrDefault(word(cell), "");
            names.add(name);
            if (name.isEmpty() && !cell.isEmpty()) {
                unknown.add(cell);
            }
        }
        return new Columns(names, unknown);
    }

    private static String word(String cell) {
        return cell.toLowerCase(Locale.ROOT).replaceAll("\\(.*?\\)|\\[.*?\\]", " ").replaceAll("[_,;/]+", " ").strip().replaceAll("\\s+\\d+$|(?<=\\D)\\d+$", "").replaceAll("\\s+", " ").strip();
    }

    /** Every cell of a row that holds {@code name} and is not empty, left to right. */
    public List<String> cells(CsvRow row, String name) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).equals(name) && !row.cell(i).isEmpty()) {
                found.add(row.cell(i));
            }
        }
        return found;
    }

    /** The first of them, or empty text. */
    public String cell(CsvRow row, String name) {
        List<String> found = cells(row, name);
        return found.isEmpty() ? "" : found.get(0);
    }

    /** Whether a column holds this. */
    public boolean has(String name) {
        return names.contains(name);
    }
}
