package culm.bench.csv;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;

/**
 * A table as it was read. Cells are told apart by tabs, semicolons or commas, whichever the first row has; lines that begin with # are
 * remarks, and those like {@code # caliper: 0.03} are kept as {@link #notes()}. A row that cannot be taken apart is a problem with its line,
 * and reading goes on behind it.
 *
 * @param rows     all rows but remarks and empty ones, the head (if there is one) among them
 * @param notes    named remarks, lower case
 * @param problems rows that could not be taken apart
 */
public record CsvSheet(List<CsvRow> rows, Map<String, String> notes, List<FileProblem> problems) {
    private static final int LONGEST_ROW = 40;
    private static final char[] BETWEEN = {'\t', ';', ','};

    /** @param text the whole file; @param file its name for messages */
    public static CsvSheet read(String text, String file) {
        String[] lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
        CsvSheet sheet = new CsvSheet(new ArrayList<>(), new LinkedHashMap<>(), new ArrayList<>());
        CSVFormat format = null;
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i];
            if (line.isBlank()) {
                continue;
            }
            if (line.startsWith("#")) {
                sheet.note(line.substring(1));
                continue;
            }
            format = format == null ? format(line) : format;
            int last = end(lines, i);
            if (last < 0) {
                sheet.problems.add(problem(file, i + 1, line, "a quotation mark is opened here and never closed; the row was left out"));
                continue;
            }
            sheet.row(String.join("\n", java.util.Arrays.asList(lines).subList(i, last + 1)), i + 1, format, file);
            i = last;
        }
        return sheet;
    }

    private static CSVFormat format(String first) {
        char between = ',';
        for (int i = BETWEEN.length - 1; i >= 0; i--) {
            between = first.indexOf(BETWEEN[i]) >= 0 ? BETWEEN[i] : between;
        }
        return CSVFormat.DEFAULT.builder().setDelimiter(between).setIgnoreSurroundingSpaces(true).get();
    }

    /** The line on which the quotation marks of a row are even again; -1 when they never are. */
    private static int end(String[] lines, int from) {
        long marks = 0;
        for (int i = from; i < Math.min(lines.length, from + LONGEST_ROW); i++) {
            marks += lines[i].chars().filter(c -> c == '"').count();
            if (marks % 2 == 0) {
                return i;
            }
        }
        return -1;
    }

    private void note(String remark) {
        int colon = remark.indexOf(':');
        if (colon > 0) {
            notes.put(remark.substring(0, colon).strip().toLowerCase(java.util.Locale.ROOT), remark.substring(colon + 1).strip());
        }
    }

    private void row(String text, int line, CSVFormat format, String file) {
        try (CSVParser parser = format.parse(new StringReader(text))) {
            for (CSVRecord record : parser) {
                List<String> cells = record.stream().map(c -> CsvText.plain(c.strip())).collect(Collectors.toList());
                if (cells.stream().anyMatch(c -> !c.isEmpty())) {
                    rows.add(new CsvRow(line, cells));
                }
            }
        } catch (IOException | java.io.UncheckedIOException e) {
            problems.add(problem(file, line, text, "the quotation marks of this row do not fit together; the row was left out"));
        }
    }

    private static FileProblem problem(String file, int line, String value, String sentence) {
        return new FileProblem(Kind.BAD_VALUE, file, line, value, sentence);
    }
}
