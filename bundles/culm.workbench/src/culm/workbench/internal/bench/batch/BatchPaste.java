package culm.workbench.internal.bench.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import culm.bench.batch.BatchCsv;
import culm.bench.batch.BatchModel;
import culm.bench.batch.StapleBatch;
import culm.model.Batch;
import culm.model.MeasuredStaple;
import culm.model.problem.FileProblem;
import culm.workbench.internal.numbers.NumberForm;

/**
 * A table from a spreadsheet. With a head that names its columns it is read as a file is, bad rows named and left out; without one its cells
 * fill the grid from the current cell on, and one bad cell leaves everything as it was, since the rows below would move up.
 */
final class BatchPaste {
    private final BatchEdits edits;
    private final BatchColumns columns;
    private final NumberForm form;

    BatchPaste(BatchEdits edits, BatchColumns columns, NumberForm form) {
        this.edits = edits;
        this.columns = columns;
        this.form = form;
    }

    private record Cell(int row, int column, String text, double value) {
    }

    /** @return empty when the text is no table */
    Optional<String> paste(int row, int column, String text) {
        String stripped = text.strip();
        if (stripped.indexOf('\n') < 0 && stripped.indexOf('\t') < 0 && stripped.indexOf(';') < 0) {
            return Optional.empty();
        }
        String head = stripped.lines().findFirst().orElse("").toLowerCase(java.util.Locale.ROOT);
        return Optional.of(head.contains("length") && head.contains("narrow") ? table(stripped) : cells(row, column, text));
    }

    private String table(String text) {
        StapleBatch before = BatchModel.read(edits.batch(), 0);
        BatchCsv.Result read = BatchCsv.read(text, "the pasted table", before);
        return took(edits, read, false);
    }

    /** Takes a table that was read. @return what to say of it */
    static String took(BatchEdits edits, BatchCsv.Result read, boolean whole) {
        int[] counts = new int[2];
        Optional<String> refused = read.batch().staples().isEmpty() ? Optional.of("No staple was taken.") : edits.take(read.batch(), whole, counts);
        StringBuilder said = new StringBuilder(refused.orElse(taken(counts[0], counts[1])));
        for (FileProblem problem : read.problems()) {
            said.append(' ').append(problem.message()).append('.');
        }
        return said.toString().replace("..", ".");
    }

    private static String taken(int come, int anew) {
        if (come == 0 && anew > 0) {
            return staples(anew) + " measured anew.";
        }
        return staples(come) + " taken" + (anew > 0 ? ", " + anew + " measured anew" : "") + ".";
    }

    private static String staples(int count) {
        return count + (count == 1 ? " staple" : " staples");
    }

    private String cells(int row, int column, String text) {
        List<Cell> cells = new ArrayList<>();
        String[] lines = text.split("\\R");
        int widest = Stream.of(lines).mapToInt(line -> parts(line).length).max().orElse(0);
        List<Integer> into = columnsFrom(column, widest);
        int to = row;
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].stripTrailing();
            if (line.isBlank() || cells.isEmpty() && line.chars().noneMatch(Character::isDigit)) {
                continue;
            }
            String[] parts = parts(line);
            if (parts.length > into.size()) {
                return "Line " + (i + 1) + " has " + parts.length + " cells, here are " + into.size() + " columns. Nothing was pasted.";
            }
            for (int c = 0; c < parts.length; c++) {
                String wrong = cell(cells, to, into.get(c), parts[c].strip());
                if (!wrong.isEmpty()) {
                    return "Line " + (i + 1) + ": " + wrong + " Nothing was pasted.";
                }
            }
            to++;
        }
        Optional<String> refused = edits.all("paste", b -> cells.forEach(c -> put(b, c)));
        return refused.orElse("");
    }

    private static String[] parts(String line) {
        return line.indexOf('\t') >= 0 ? line.split("\t", -1) : line.indexOf(';') >= 0 ? line.split(";", -1) : line.strip().split("\\s+");
    }

    /** Where cells go: one reading each when there are as many cells as things to measure from here on; otherwise column by column. */
    private List<Integer> columnsFrom(int column, int cells) {
        List<Integer> all = new ArrayList<>();
        List<Integer> firsts = new ArrayList<>();
        for (int c = column; c < columns.all().size(); c++) {
            if (columns.get(c).editable()) {
                all.add(c);
            }
            if (columns.reading(c) != null && columns.reading(c).number() == 0) {
                firsts.add(c);
            }
        }
        return !firsts.isEmpty() && firsts.get(0) == column && firsts.size() == cells ? firsts : all;
    }

    private String cell(List<Cell> cells, int row, int column, String text) {
        BatchColumns.Reading reading = columns.reading(column);
        if (text.isEmpty()) {
            return "";
        }
        if (reading == null) {
            cells.add(new Cell(row, column, text, Double.NaN));
            return "";
        }
        try {
            double value = form.parse(text);
            Optional<String> refused = BatchEdits.refuse(reading.dimension(), value, form);
            cells.add(new Cell(row, column, text, value));
            return refused.orElse("");
        } catch (NumberFormatException e) {
            return e.getMessage();
        }
    }

    private void put(Batch batch, Cell cell) {
        MeasuredStaple staple = BatchEdits.staple(batch, cell.row());
        BatchColumns.Reading reading = columns.reading(cell.column());
        if (reading != null) {
            BatchEdits.put(staple, reading, cell.value());
            return;
        }
        switch (columns.get(cell.column()).id()) {
            case BatchColumns.LABEL -> staple.setLabel(cell.text());
            case BatchColumns.ASIDE -> staple.setSetAside(cell.text());
            default -> staple.setNotes(cell.text());
        }
    }
}
