package culm.bench.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.bench.csv.Columns;
import culm.bench.csv.CsvRow;
import culm.bench.csv.CsvSheet;
import culm.bench.csv.CsvStyle;
import culm.bench.csv.CsvWriter;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;

/** The reed log as CSV; columns may stand in any order and be left out, the first row names them. */
public final class LogCsv {
    /** Columns as they are written, with what they mean. */
    static final Map<String, String> COLUMNS = columns();

    private LogCsv() {
    }

    /**
     * What was read.
     *
     * @param log      every good row
     * @param problems every row or column that was left out, with its line
     */
    public record Result(List<Tied> log, List<FileProblem> problems) {
    }

    private static Map<String, String> columns() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("number", "the number on the blank");
        all.put("date", "when it was tied, as 2026-03-09 or 9.3.2026");
        all.put("tied by", "who tied it");
        all.put("made for", "who it is for");
        all.put("design", "file of the design");
        all.put("staple", "which staple, as in its batch");
        all.put("staple batch", "file or name of the staples' batch");
        all.put("gouge", "");
        all.put("cane batch", "");
        all.put("shape", "");
        all.put("thread", "");
        all.put("winding", "clockwise or anticlockwise, seen from the tip");
        all.put("cane held", "how the cane was held while tying");
        all.put("ends", "plain, thinned or bevelled");
        all.put("wire", "yes or no");
        all.put("sealing", "");
        all.put("staple length", "mm");
        all.put("tie length", "mm, measured after tying");
        all.put("turns on left", "turns left when the left side closed; negative when still open at the top of the wrap");
        all.put("turns on right", "the same on the right");
        all.put("wrap top", "mm from the bottom of the staple");
        all.put("leak folded", "none, slight or leaks; fold still closed");
        all.put("leak cut", "none, slight or leaks; tip cut");
        all.put("straight", "yes or no");
        all.put("finished length", "mm");
        all.put("keeper", "yes or no");
        all.put("remarks", "");
        return all;
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        COLUMNS.keySet().forEach(c -> words.put(c, c));
        words.put("no", "number");
        words.put("no.", "number");
        words.put("blank", "number");
        words.put("by", "tied by");
        words.put("for", "made for");
        words.put("tie", "tie length");
        words.put("finished", "finished length");
        words.put("top of the wrap", "wrap top");
        words.put("turns left on left", "turns on left");
        words.put("turns left on right", "turns on right");
        words.put("notes", "remarks");
        return words;
    }

    /** Reads a table. @param file its name for messages */
    public static Result read(String text, String file) {
        CsvSheet sheet = CsvSheet.read(text, file);
        List<FileProblem> problems = new ArrayList<>(sheet.problems());
        List<Tied> log = new ArrayList<>();
        if (sheet.rows().isEmpty()) {
            problems.add(new FileProblem(Kind.EMPTY, file, 0, "", "there is no blank in it"));
            return new Result(log, problems);
        }
        CsvRow head = sheet.rows().get(0);
        Columns columns = Columns.of(head.cells(), words());
        if (!columns.has("number")) {
            problems.add(new FileProblem(Kind.MISSING_VALUE, file, head.line(), String.join(" ", head.cells()), "the first row should name the columns; \"number\" is not among them"));
            return new Result(log, problems);
        }
        for (String word : columns.unknown()) {
            problems.add(new FileProblem(Kind.BAD_VALUE, file, head.line(), word, "the column \"" + word + "\" is not known here and was left out"));
        }
        Map<String, Tied> known = new HashMap<>();
        for (CsvRow row : sheet.rows().subList(1, sheet.rows().size())) {
            LogRow cells = new LogRow(row, columns, file);
            Tied tied = cells.read();
            Tied before = known.get(tied.number());
            if (!cells.problems().isEmpty()) {
                problems.addAll(cells.problems());
            } else if (before != null && !tied.number().isEmpty()) {
                problems.add(new FileProblem(Kind.BAD_VALUE, file, row.line(), tied.number(), LogChecks.sentence(tied.number(), before.line()) + "; the row was left out"));
            } else {
                log.add(tied);
                known.put(tied.number(), tied);
            }
        }
        problems.sort(java.util.Comparator.comparingInt(FileProblem::line));
        return new Result(log, problems);
    }

    /** Writes a log with its columns explained. */
    public static String write(List<Tied> log, CsvStyle style) {
        CsvWriter csv = new CsvWriter(style);
        COLUMNS.forEach((name, help) -> {
            if (!help.isEmpty()) {
                csv.remark(name + " = " + help);
            }
        });
        COLUMNS.keySet().forEach(csv::text);
        csv.end();
        for (Tied t : log) {
            csv.text(t.number()).text(t.on().map(Object::toString).orElse("")).text(t.by()).text(t.madeFor()).text(t.from().design()).text(t.from().staple())
                    .text(t.from().stapleBatch()).text(t.from().gouge()).text(t.from().caneBatch()).text(t.from().shape()).text(t.from().thread())
                    .text(t.how().winding()).text(t.how().caneHeld()).text(t.how().ends()).text(yes(t.how().wire())).text(t.how().sealing());
            for (OptionalDouble value : List.of(t.seen().stapleLength(), t.seen().tie(), t.seen().left(), t.seen().right(), t.seen().wrapTop())) {
                csv.exact(value.orElse(Double.NaN));
            }
            csv.text(t.seen().folded().map(Leak::word).orElse("")).text(t.seen().cut().map(Leak::word).orElse("")).text(yes(t.seen().straight()))
                    .exact(t.seen().finished().orElse(Double.NaN)).text(yes(t.seen().keeper())).text(t.remarks()).end();
        }
        return csv.text();
    }

    private static String yes(Optional<Boolean> value) {
        return value.map(v -> v ? "yes" : "no").orElse("");
    }
}
