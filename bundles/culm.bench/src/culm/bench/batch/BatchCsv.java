package culm.bench.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.bench.csv.Columns;
import culm.bench.csv.CsvRow;
import culm.bench.csv.CsvSheet;
import culm.bench.csv.CsvStyle;
import culm.bench.csv.CsvWriter;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.text.Numbers;

/**
 * Measured staples as CSV. Columns may stand in any order; a column may be repeated for repeated readings, and so may a staple's row. Without a
 * head, three columns are length, wide, narrow, and four have the staple's name in front.
 */
public final class BatchCsv {
    private static final Map<String, String> WORDS = words();
    private static final String STEP = "ties in steps of";
    private static final String SPARE = "turns to spare";
    private static final double SMALLEST = 0.2;
    private static final double LARGEST = 200;

    private BatchCsv() {
    }

    /**
     * What was read.
     *
     * @param batch    every good row
     * @param problems every row or column that was left out, with its line; the batch holds all the others
     */
    public record Result(StapleBatch batch, List<FileProblem> problems) {
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        List.of("staple", "name", "label", "number", "no", "no.", "id").forEach(w -> words.put(w, "staple"));
        List.of("length", "staple length").forEach(w -> words.put(w, "length"));
        List.of("top wide", "wide", "topwide", "wide axis", "width").forEach(w -> words.put(w, "wide"));
        List.of("top narrow", "narrow", "topnarrow", "narrow axis", "height").forEach(w -> words.put(w, "narrow"));
        List.of("set aside", "setaside").forEach(w -> words.put(w, "aside"));
        List.of("notes", "note", "remarks", "remark").forEach(w -> words.put(w, "notes"));
        return words;
    }

    /**
     * Reads a table.
     * @param text     the whole file
     * @param file     its name for messages
     * @param otherwise name, caliper, wrap below the top and how it is split, where the file does not say
     */
    public static Result read(String text, String file, StapleBatch otherwise) {
        CsvSheet sheet = CsvSheet.read(text, file);
        List<FileProblem> problems = new ArrayList<>(sheet.problems());
        List<CsvRow> rows = new ArrayList<>(sheet.rows());
        Columns columns = columns(rows, file, problems);
        Map<String, StapleReadings> staples = new LinkedHashMap<>();
        for (CsvRow row : rows) {
            if (columns != null) {
                read(row, columns, file, problems, staples);
            }
        }
        problems.sort(java.util.Comparator.comparingInt(FileProblem::line));
        return new Result(new StapleBatch(sheet.notes().getOrDefault("batch", otherwise.name()), List.copyOf(staples.values()),
                new Caliper(note(sheet, "caliper", otherwise.caliper().largestError(), 0, 1, file, problems)),
                note(sheet, "wrap below top", otherwise.wrapBelowTop(), 0, 20, file, problems),
                new SplitBy(note(sheet, STEP, otherwise.by().step(), BatchPlanner.LEAST_STEP, BatchPlanner.MOST_STEP, file, problems),
                        note(sheet, SPARE, otherwise.by().margin(), 0, BatchPlanner.MOST_MARGIN, file, problems))), problems);
    }

    private static double note(CsvSheet sheet, String name, double otherwise, double least, double most, String file, List<FileProblem> problems) {
        String text = sheet.notes().get(name);
        if (text == null) {
            return otherwise;
        }
        try {
            double value = Numbers.parseTyped(text.replaceAll("\\s*mm.*$", "").strip());
            if (value >= least && value <= most) {
                return value;
            }
            problems.add(new FileProblem(Kind.OUT_OF_RANGE, file, 0, text, "the remark \"" + name + "\" is outside " + Numbers.format(least) + " to " + Numbers.format(most) + (name.equals(SPARE) ? "" : " mm")
                    + " and was left out"));
        } catch (NumberFormatException e) {
            problems.add(new FileProblem(Kind.NOT_A_NUMBER, file, 0, text, "the remark \"" + name + ": " + text + "\" " + e.getMessage() + " and was left out"));
        }
        return otherwise;
    }

    /** Takes the head off the rows, or names the columns where there is none; null when that cannot be. */
    private static Columns columns(List<CsvRow> rows, String file, List<FileProblem> problems) {
        if (rows.isEmpty()) {
            problems.add(new FileProblem(Kind.EMPTY, file, 0, "", "there is no staple in it"));
            return null;
        }
        CsvRow first = rows.get(0);
        Columns columns = Columns.of(first.cells(), WORDS);
        if (columns.has("length") && columns.has("wide") && columns.has("narrow")) {
            rows.remove(0);
            for (String word : columns.unknown()) {
                problems.add(new FileProblem(Kind.BAD_VALUE, file, first.line(), word, "the column \"" + word + "\" is not known here and was left out"));
            }
            return columns;
        }
        int cells = first.cells().size();
        boolean numbers = first.cells().subList(Math.max(0, cells - 3), cells).stream().allMatch(BatchCsv::isNumber);
        if ((cells == 3 || cells == 4) && numbers) {
            return new Columns(cells == 3 ? List.of("length", "wide", "narrow") : List.of("staple", "length", "wide", "narrow"), List.of());
        }
        problems.add(new FileProblem(Kind.MISSING_VALUE, file, first.line(), String.join(" ", first.cells()),
                "the first row should name the columns: staple, length, top wide, top narrow"));
        return null;
    }

    private static boolean isNumber(String cell) {
        try {
            Numbers.parseTyped(cell);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static void read(CsvRow row, Columns columns, String file, List<FileProblem> problems, Map<String, StapleReadings> staples) {
        if (row.cells().size() > columns.names().size() && row.cells().subList(columns.names().size(), row.cells().size()).stream().anyMatch(c -> !c.isEmpty())) {
            problems.add(new FileProblem(Kind.BAD_VALUE, file, row.line(), String.join(" | ", row.cells()), "the row has " + row.cells().size() + " cells, the head "
                    + columns.names().size() + "; where the comma is the decimal sign, cells are told apart by semicolons. The row was left out"));
            return;
        }
        String label = columns.cell(row, "staple").isEmpty() ? "line " + row.line() : columns.cell(row, "staple");
        List<FileProblem> wrong = new ArrayList<>();
        StapleReadings readings = new StapleReadings(label, numbers(row, columns, "length", file, wrong), numbers(row, columns, "wide", file, wrong),
                numbers(row, columns, "narrow", file, wrong), columns.cell(row, "aside"), columns.cell(row, "notes"));
        if (!wrong.isEmpty()) {
            problems.addAll(wrong);
            return;
        }
        staples.merge(label, readings, BatchCsv::both);
    }

    private static List<Double> numbers(CsvRow row, Columns columns, String name, String file, List<FileProblem> wrong) {
        List<Double> values = new ArrayList<>();
        for (String cell : columns.cells(row, name)) {
            try {
                double value = Numbers.parseTyped(cell);
                if (value >= SMALLEST && value <= LARGEST) {
                    values.add(value);
                } else {
                    wrong.add(new FileProblem(Kind.OUT_OF_RANGE, file, row.line(), cell, "the " + name + " " + cell + " is no measure of a staple in mm; the row was left out"));
                }
            } catch (NumberFormatException e) {
                wrong.add(new FileProblem(Kind.NOT_A_NUMBER, file, row.line(), cell, "the " + name + " \"" + cell + "\" " + e.getMessage() + "; the row was left out"));
            }
        }
        return values;
    }

    /** The same staple again: more readings of it. */
    private static StapleReadings both(StapleReadings a, StapleReadings b) {
        return new StapleReadings(a.label(), join(a.lengths(), b.lengths()), join(a.wides(), b.wides()), join(a.narrows(), b.narrows()),
                either(a.setAside(), b.setAside()), either(a.notes(), b.notes()));
    }

    private static List<Double> join(List<Double> a, List<Double> b) {
        List<Double> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    private static String either(String a, String b) {
        return a.isEmpty() || a.equals(b) ? b : b.isEmpty() ? a : a + " " + b;
    }

    /** Writes a batch with its columns explained. */
    public static String write(StapleBatch batch, CsvStyle style) {
        CsvWriter csv = new CsvWriter(style);
        csv.remark("batch: " + batch.name()).remark("caliper: " + Numbers.format(batch.caliper().largestError()) + " mm, largest permitted error (ISO 13385-1: partial surface contact error, E MPE)")
                .remark("wrap below top: " + Numbers.format(batch.wrapBelowTop()) + " mm")
                .remark(STEP + ": " + Numbers.format(batch.by().step()) + " mm").remark(SPARE + ": " + Numbers.format(batch.by().margin()));
        int[] repeats = new int[Dimension.values().length];
        for (Dimension d : Dimension.values()) {
            csv.remark(d.label() + " = " + d.help() + " mm; repeat the column for repeated readings");
            repeats[d.ordinal()] = batch.staples().stream().mapToInt(s -> s.readings(d).size()).max().orElse(1);
        }
        csv.text("staple");
        for (Dimension d : Dimension.values()) {
            for (int i = 1; i <= Math.max(1, repeats[d.ordinal()]); i++) {
                csv.text(d.label() + (i == 1 ? "" : " " + i));
            }
        }
        csv.text("set aside").text("notes").end();
        for (StapleReadings staple : batch.staples()) {
            csv.text(staple.label());
            for (Dimension d : Dimension.values()) {
                for (int i = 0; i < Math.max(1, repeats[d.ordinal()]); i++) {
                    csv.exact(i < staple.readings(d).size() ? staple.readings(d).get(i) : Double.NaN);
                }
            }
            csv.text(staple.setAside()).text(staple.notes()).end();
        }
        return csv.text();
    }
}
