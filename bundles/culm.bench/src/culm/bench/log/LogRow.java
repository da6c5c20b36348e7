package culm.bench.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import culm.bench.csv.Columns;
import culm.bench.csv.CsvRow;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.text.Numbers;

/** Takes one row of a log's table apart; whatever is wrong with it is kept, cell by cell. */
final class LogRow {
    private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final double MOST_TURNS = 60;
    private final CsvRow row;
    private final Columns columns;
    private final String file;
    private final List<FileProblem> problems = new ArrayList<>();

    LogRow(CsvRow row, Columns columns, String file) {
        this.row = row;
        this.columns = columns;
        this.file = file;
    }

    List<FileProblem> problems() {
        return problems;
    }

    Tied read() {
        if (row.cells().size() > columns.names().size() && row.cells().subList(columns.names().size(), row.cells().size()).stream().anyMatch(c -> !c.isEmpty())) {
            wrong(Kind.BAD_VALUE, String.join(" | ", row.cells()), "the row has " + row.cells().size() + " cells, the head " + columns.names().size()
                    + "; where the comma is the decimal sign, cells are told apart by semicolons");
        }
        if (cell("number").isEmpty()) {
            wrong(Kind.MISSING_VALUE, String.join(" | ", row.cells()), "the blank has no number");
        }
        TiedFrom from = new TiedFrom(cell("design"), cell("staple"), cell("staple batch"), cell("gouge"), cell("cane batch"), cell("shape"), cell("thread"));
        TiedHow how = new TiedHow(word("winding", "clockwise", "anticlockwise"), cell("cane held"), word("ends", "plain", "thinned", "bevelled"), yes("wire"), cell("sealing"));
        Seen seen = new Seen(length(LogMeasure.STAPLE), length(LogMeasure.TIE), length(LogMeasure.WRAP_TOP), turns("turns on left"),
                turns("turns on right"), leak("leak folded"), leak("leak cut"), yes("straight"), length(LogMeasure.FINISHED), yes("keeper"));
        return new Tied(cell("number"), date(), cell("tied by"), cell("made for"), from, how, seen, cell("remarks"), row.line());
    }

    private String cell(String name) {
        return columns.cell(row, name);
    }

    private OptionalDouble length(LogMeasure measure) {
        OptionalDouble value = number(measure.column());
        LogChecks.refusal(measure, value).ifPresent(why -> wrong(Kind.OUT_OF_RANGE, cell(measure.column()), why));
        return value;
    }

    private OptionalDouble turns(String name) {
        OptionalDouble value = number(name);
        if (value.isPresent() && Math.abs(value.getAsDouble()) > MOST_TURNS) {
            wrong(Kind.OUT_OF_RANGE, cell(name), "the " + name + " " + cell(name) + " is outside " + Numbers.format(-MOST_TURNS) + " to " + Numbers.format(MOST_TURNS));
        }
        return value;
    }

    private OptionalDouble number(String name) {
        String cell = cell(name);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Numbers.parseTyped(cell));
        } catch (NumberFormatException e) {
            wrong(Kind.NOT_A_NUMBER, cell, "the " + name + " \"" + cell + "\" " + e.getMessage());
        }
        return OptionalDouble.empty();
    }

    private String word(String name, String... words) {
        String cell = cell(name).toLowerCase(Locale.ROOT);
        if (cell.isEmpty() || List.of(words).contains(cell)) {
            return cell;
        }
        wrong(Kind.BAD_VALUE, cell, "the " + name + " \"" + cell(name) + "\" is none of " + String.join(", ", words));
        return "";
    }

    private Optional<Leak> leak(String name) {
        String word = word(name, "none", "slight", "leaks");
        return word.isEmpty() ? Optional.empty() : Optional.of(Leak.valueOf(word.toUpperCase(Locale.ROOT)));
    }

    private Optional<Boolean> yes(String name) {
        return switch (word(name, "yes", "no", "y", "n", "x", "true", "false")) {
            case "yes", "y", "x", "true" -> Optional.of(true);
            case "no", "n", "false" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private Optional<LocalDate> date() {
        String cell = cell("date");
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            Matcher dotted = DOTTED.matcher(cell);
            return Optional.of(dotted.matches() ? LocalDate.of(Integer.parseInt(dotted.group(3)), Integer.parseInt(dotted.group(2)), Integer.parseInt(dotted.group(1)))
                    : LocalDate.parse(cell));
        } catch (DateTimeException e) {
            wrong(Kind.BAD_VALUE, cell, "the date \"" + cell + "\" is none that can be read; write 2026-03-09 or 9.3.2026");
            return Optional.empty();
        }
    }

    private void wrong(Kind kind, String value, String sentence) {
        problems.add(new FileProblem(kind, file, row.line(), value, sentence + "; the row was left out"));
    }
}
