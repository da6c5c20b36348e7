package culm.bench.csv;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text in cells, so that a spreadsheet does not take it for a formula: a cell that would begin with =, +, -, @, a tab or a line break (also in
 * full width) gets an apostrophe in front, and loses it when read. Text that begins with apostrophes and then such a sign gets one more,
 * so that nothing is changed by writing and reading. The signs are those of OWASP's page on CSV injection (from memory).
 */
public final class CsvText {
    private static final Pattern RUNS = Pattern.compile("'*[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20].*", Pattern.DOTALL);
    private static final Pattern KEPT = Pattern.compile("'('*[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20].*)", Pattern.DOTALL);

    private CsvText() {
    }

    /** The text as it is written. */
    public static String safe(String text) {
        return RUNS.matcher(text).matches() ? "'" + text : text;
    }

    /** The text as it was meant. */
    public static String plain(String cell) {
        Matcher kept = KEPT.matcher(cell);
        return kept.matches() ? kept.group(1) : cell;
    }
}
