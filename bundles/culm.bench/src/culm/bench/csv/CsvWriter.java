package culm.bench.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import culm.model.text.Numbers;

/** Writes a table: remarks that explain the columns first, then a head, then rows. Lines end as RFC 4180 has it. */
public final class CsvWriter {
    private final StringBuilder out = new StringBuilder();
    private final CsvStyle style;
    private final CSVPrinter printer;
    private final List<String> row = new ArrayList<>();

    public CsvWriter(CsvStyle style) {
        this.style = style;
        try {
            printer = new CSVPrinter(out, CSVFormat.DEFAULT.builder().setDelimiter(style.between()).setRecordSeparator("\r\n").get());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A line that no reader takes for a row. */
    public CsvWriter remark(String text) {
        out.append("# ").append(text.replaceAll("[\\r\\n]+", " ")).append("\r\n");
        return this;
    }

    /** The next cell, text. */
    public CsvWriter text(String text) {
        row.add(CsvText.safe(text == null ? "" : text.strip()));
        return this;
    }

    /** The next cell, a number with so many decimals; empty when it is none. */
    public CsvWriter number(double value, int decimals) {
        row.add(Double.isFinite(value) ? style.number(Numbers.fixed(value, decimals)) : "");
        return this;
    }

    /** The next cell, a number with every digit it has; empty when it is none. */
    public CsvWriter exact(double value) {
        row.add(Double.isFinite(value) ? style.number(Numbers.format(value)) : "");
        return this;
    }

    /** Ends the row. */
    public CsvWriter end() {
        try {
            printer.printRecord(row);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        row.clear();
        return this;
    }

    /** Everything so far. */
    public String text() {
        return out.toString();
    }
}
