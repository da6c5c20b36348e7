package culm.cli.explore;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import culm.bench.csv.CsvFile;
import culm.bench.csv.CsvRow;
import culm.bench.csv.CsvSheet;
import culm.cli.CommandException;
import culm.explore.Spread;
import culm.explore.Usual;
import culm.explore.Varied;
import culm.model.problem.FileProblemException;
import culm.model.text.Numbers;

/**
 * Reads spreads: {@code INPUT=0.1} (plus or minus, uniform), {@code INPUT=uniform:-0.1,0.2}, {@code INPUT=normal:0.05},
 * {@code INPUT=triangular:-0.1,0,0.2}, {@code INPUT=measured:FILE:COLUMN}, {@code INPUT=fixed}.
 */
final class Spreads {
    private Spreads() {
    }

    /** @param only whether nothing else varies; else every other input varies within its own give or take */
    static List<Varied> of(Question question, boolean only) throws CommandException, FileProblemException {
        List<Varied> all = new ArrayList<>(only ? List.of() : Usual.of(question.blank()));
        for (Question.Assignment a : question.assignments) {
            String path = question.number(a.input());
            List<String> also = all.stream().filter(v -> v.path().equals(path)).findFirst().map(Varied::also).orElse(List.of());
            all.removeIf(v -> v.path().equals(path));
            Spread spread = spread(question, path, a.value());
            if (spread.moves()) {
                all.add(new Varied(path, spread, also));
            }
        }
        if (all.isEmpty()) {
            throw CommandException.usage("nothing varies; give INPUT=GIVE_OR_TAKE");
        }
        return all;
    }

    private static Spread spread(Question question, String path, String text) throws CommandException, FileProblemException {
        int colon = text.indexOf(':');
        String kind = colon < 0 ? text : text.substring(0, colon);
        String rest = colon < 0 ? "" : text.substring(colon + 1);
        try {
            if (kind.equals("fixed")) {
                return new Spread.Fixed();
            }
            if (kind.equals("measured")) {
                int split = rest.lastIndexOf(':');
                if (split < 1) {
                    throw CommandException.usage(path + ": measured:FILE:COLUMN is needed");
                }
                String file = rest.substring(0, split);
                return new Spread.Measured(column(question.path(file), file, rest.substring(split + 1)), file);
            }
            if (colon < 0) {
                return new Spread.Uniform(Question.real(text.replaceFirst("^(±|\\+-)", ""), path));
            }
            String[] words = rest.split(",", -1);
            double[] x = new double[words.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = Question.real(words[i], path);
            }
            switch (kind + x.length) {
                case "uniform1":
                    return new Spread.Uniform(x[0]);
                case "uniform2":
                    return new Spread.Uniform(x[0], x[1]);
                case "normal1":
                    return new Spread.Normal(x[0]);
                case "triangular3":
                    return new Spread.Triangular(x[0], x[1], x[2]);
                default:
                    throw CommandException.usage(path + ": '" + text + "' is no spread; known are uniform:T, uniform:LOW,HIGH, normal:SD, triangular:LOW,PEAK,HIGH, measured:FILE:COLUMN, fixed");
            }
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(path + ": " + e.getMessage());
        }
    }

    /** One column of a table as spreadsheets write them, whose first row names the columns. */
    private static double[] column(Path path, String file, String name) throws CommandException, FileProblemException {
        CsvSheet sheet = CsvSheet.read(CsvFile.read(path, file), file);
        if (!sheet.problems().isEmpty()) {
            throw new FileProblemException(sheet.problems().get(0));
        }
        CsvRow head = sheet.rows().isEmpty() ? new CsvRow(1, List.of()) : sheet.rows().get(0);
        int at = head.cells().indexOf(name);
        if (at < 0) {
            throw CommandException.unreadable(file + ", line " + head.line() + ": there is no column '" + name + "'; there are " + String.join(", ", head.cells()));
        }
        double[] values = new double[sheet.rows().size() - 1];
        for (int i = 0; i < values.length; i++) {
            CsvRow row = sheet.rows().get(i + 1);
            try {
                values[i] = Numbers.parseTyped(row.cell(at));
            } catch (NumberFormatException e) {
                throw CommandException.unreadable(file + ", line " + row.line() + ": '" + row.cell(at) + "' " + e.getMessage());
            }
        }
        return values;
    }
}
