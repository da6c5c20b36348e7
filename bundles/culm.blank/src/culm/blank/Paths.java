package culm.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Rows;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.MeasuredShape;

/** Reads and writes the numbers of a blank by path. */
final class Paths {
    private static final String INSIDE = "inside";

    private Paths() {
    }

    /** A cell of a table in what a path says behind its part, {@code places[3].width}; read by hand, since it is asked a thousand times for each blank. */
    private record Cell(String table, int row, String column) {
        private static final int MOST_DIGITS = 4;

        static Optional<Cell> in(String rest) {
            int open = rest.indexOf('[');
            int close = rest.indexOf("].", open + 1);
            if (open < 1 || close < 0 || close - open < 2 || close - open - 1 > MOST_DIGITS || close + 2 == rest.length()) {
                return Optional.empty();
            }
            int row = 0;
            for (int i = open + 1; i < close; i++) {
                int digit = rest.charAt(i) - '0';
                if (digit < 0 || digit > 9) {
                    return Optional.empty();
                }
                row = 10 * row + digit;
            }
            return Optional.of(new Cell(rest.substring(0, open), row, rest.substring(close + 2)));
        }
    }

    static OptionalDouble value(Blank blank, String path) {
        if (Inputs.all().containsKey(path)) {
            double number = blank.number(path);
            return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
        }
        String rest = rest(path);
        Optional<Cell> cell = Cell.in(rest);
        if (cell.isPresent()) {
            Cell at = cell.get();
            TableParameter described = table(typeOf(blank, path), part(path), at.table(), path);
            Table rows = part(path).equals(INSIDE) ? blank.insideWidths().orElseThrow(() -> unknown(path)) : values(blank, path).table(at.table());
            if (at.row() >= rows.rows()) {
                throw unknown(path);
            }
            return OptionalDouble.of(rows.cell(at.row(), column(described, at.column(), path)));
        }
        Values values = values(blank, path);
        return values.has(rest) ? OptionalDouble.of(values.number(rest)) : OptionalDouble.empty();
    }

    static void set(BlankBuilder b, String path, double value) {
        if (Inputs.all().containsKey(path)) {
            b.numbers.put(path, value);
            return;
        }
        switch (part(path)) {
            case "staple" -> b.staple = changed(b.staple, path, value);
            case "gouge" -> b.gouge = changed(b.gouge, path, value);
            case "gougeEnd" -> b.gougeEnd = changed(required(b.gougeEnd, path), path, value);
            case "shape" -> b.shape = changed(b.shape, path, value);
            case INSIDE -> b.insideWidths = changed(required(b.insideWidths, path), MeasuredShape.TABLE, path, value);
            default -> throw unknown(path);
        }
    }

    /** Description of the number at a path. */
    static Parameter parameter(Blank blank, String path) {
        Parameter typed = Inputs.all().get(path);
        if (typed != null) {
            return typed;
        }
        ProfileType type = typeOf(blank, path);
        Optional<Cell> cell = Cell.in(rest(path));
        if (cell.isPresent()) {
            TableParameter table = table(type, part(path), cell.get().table(), path);
            return table.columns().get(column(table, cell.get().column(), path));
        }
        return type.parameters().stream().filter(p -> p.id().equals(rest(path))).findFirst().orElseThrow(() -> unknown(path));
    }

    /** Every path that this blank may have a number for, part by part. */
    static List<String> all(Blank blank) {
        List<String> paths = new ArrayList<>();
        typed(paths, "staple.");
        profile(paths, "staple", blank.staple());
        typed(paths, "gouge.");
        profile(paths, "gouge", blank.gouge());
        blank.gougeEnd().ifPresent(end -> profile(paths, "gougeEnd", end));
        typed(paths, "shape.");
        profile(paths, "shape", blank.shape());
        blank.insideWidths().ifPresent(rows -> cells(paths, INSIDE, MeasuredShape.TABLE, rows));
        for (String part : List.of("tie.", "thread.", "cane.", "fit.")) {
            typed(paths, part);
        }
        return paths;
    }

    static IllegalArgumentException unknown(String path) {
        return new IllegalArgumentException("There is no input " + path + " in this blank.");
    }

    private static void typed(List<String> paths, String prefix) {
        Inputs.all().keySet().stream().filter(p -> p.startsWith(prefix)).forEach(paths::add);
    }

    private static void profile(List<String> paths, String part, Profile<?> profile) {
        profile.type().parameters().forEach(p -> paths.add(part + "." + p.id()));
        for (TableParameter table : profile.type().tables()) {
            Table rows = profile.values().tables().get(table.id());
            if (rows != null) {
                cells(paths, part, table, rows);
            }
        }
    }

    private static void cells(List<String> paths, String part, TableParameter table, Table rows) {
        for (int row = 0; row < rows.rows(); row++) {
            for (Parameter column : table.columns()) {
                paths.add(part + "." + Rows.path(table.id(), row, column.id()));
            }
        }
    }

    private static <T extends ProfileType> Profile<T> changed(Profile<T> profile, String path, double value) {
        String rest = rest(path);
        Optional<Cell> cell = Cell.in(rest);
        if (cell.isPresent()) {
            String id = cell.get().table();
            TableParameter described = table(profile.type(), part(path), id, path);
            return profile.with(profile.values().with(id, changed(profile.values().table(id), described, path, value)));
        }
        if (profile.type().parameters().stream().noneMatch(p -> p.id().equals(rest))) {
            throw unknown(path);
        }
        return profile.with(profile.values().with(rest, value));
    }

    private static Table changed(Table rows, TableParameter described, String path, double value) {
        Cell cell = Cell.in(rest(path)).filter(c -> c.row() < rows.rows()).orElseThrow(() -> unknown(path));
        return rows.with(cell.row(), column(described, cell.column(), path), value);
    }

    private static <T> T required(T part, String path) {
        if (part == null) {
            throw unknown(path);
        }
        return part;
    }

    private static ProfileType typeOf(Blank blank, String path) {
        return switch (part(path)) {
            case "staple" -> blank.staple().type();
            case "gouge" -> blank.gouge().type();
            case "gougeEnd" -> blank.gougeEnd().orElseThrow(() -> unknown(path)).type();
            case "shape" -> blank.shape().type();
            case INSIDE -> null;
            default -> throw unknown(path);
        };
    }

    private static Values values(Blank blank, String path) {
        return switch (part(path)) {
            case "staple" -> blank.staple().values();
            case "gouge" -> blank.gouge().values();
            case "gougeEnd" -> blank.gougeEnd().orElseThrow(() -> unknown(path)).values();
            case "shape" -> blank.shape().values();
            default -> throw unknown(path);
        };
    }

    private static TableParameter table(ProfileType type, String part, String id, String path) {
        if (part.equals(INSIDE)) {
            return MeasuredShape.TABLE;
        }
        return type.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow(() -> unknown(path));
    }

    private static int column(TableParameter table, String id, String path) {
        for (int i = 0; i < table.columns().size(); i++) {
            if (table.columns().get(i).id().equals(id)) {
                return i;
            }
        }
        throw unknown(path);
    }

    private static String part(String path) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            throw unknown(path);
        }
        return path.substring(0, dot);
    }

    private static String rest(String path) {
        return path.substring(path.indexOf('.') + 1);
    }
}
