package culm.workbench.internal.bench.log;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import culm.bench.log.LogModel;
import culm.bench.log.Tied;
import culm.figures.Numbers;
import culm.model.LogEntry;
import culm.workbench.internal.bench.grid.GridColumn;
import culm.workbench.internal.bench.grid.GridModel;

/** The blanks of a log that pass the filter, as the file has them or in the order of a column; only to be chosen from. */
final class LogRows implements GridModel {
    private static final List<GridColumn> COLUMNS = List.of(new GridColumn("number", "no.", "", "The number on the blank.", 38, true, false),
            new GridColumn("on", "tied on", "", "The day it was tied.", 84, false, false), new GridColumn("by", "by", "", "Who tied it.", 58, false, false),
            new GridColumn("turns", "turns left", "left | right", "Turns left when the sides closed, left and right.", 84, true, false),
            new GridColumn("state", "result", "", "Whether it leaks, dries, was kept.", 102, false, false));
    private List<LogEntry> asInFile = List.of();
    private List<LogEntry> entries = List.of();
    private Optional<LogOrder> order = Optional.empty();
    private List<Tied> tied = List.of();

    void show(List<LogEntry> now) {
        asInFile = List.copyOf(now);
        record Row(LogEntry entry, Tied tied) {
        }
        Stream<Row> rows = asInFile.stream().map(e -> new Row(e, LogModel.read(e)));
        List<Row> all = (order.isEmpty() ? rows : rows.sorted(Comparator.comparing(Row::tied, order.get()))).toList();
        entries = all.stream().map(Row::entry).toList();
        tied = all.stream().map(Row::tied).toList();
    }

    @Override
    public int sort(int column, int row) {
        Optional<LogEntry> current = entry(row);
        order = Optional.of(order.filter(o -> o.column() == column).map(LogOrder::turned).orElse(new LogOrder(column, false)));
        show(asInFile);
        return current.map(this::row).orElse(0);
    }

    @Override
    public String order(int column) {
        return order.filter(o -> o.column() == column).map(o -> o.down() ? " \u25be" : " \u25b4").orElse("");
    }

    /** The entry of a row. */
    Optional<LogEntry> entry(int row) {
        return row >= 0 && row < entries.size() ? Optional.of(entries.get(row)) : Optional.empty();
    }

    int row(LogEntry entry) {
        return entries.indexOf(entry);
    }

    @Override
    public List<GridColumn> columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return entries.size();
    }

    @Override
    public String text(int row, int column) {
        Tied t = tied.get(row);
        return switch (column) {
            case 0 -> t.number();
            case 1 -> t.on().map(Object::toString).orElse("");
            case 2 -> t.by();
            case 3 -> t.seen().left().isPresent() || t.seen().right().isPresent() ? side(t.seen().left()) + " | " + side(t.seen().right()) : "";
            default -> state(t);
        };
    }

    private static String side(java.util.OptionalDouble turns) {
        return turns.isPresent() ? Numbers.fixed(turns.getAsDouble(), 1) : "–";
    }

    static String state(Tied t) {
        if (t.leaked().orElse(false)) {
            return t.drying() ? "leaks, drying" : "leaks";
        }
        return t.seen().keeper().map(k -> k ? "keeper" : "no keeper").orElse(t.drying() ? "drying" : "");
    }

    @Override
    public Optional<String> doubt(int row, int column) {
        return Optional.empty();
    }

    @Override
    public boolean quiet(int row) {
        return false;
    }

    @Override
    public Optional<String> enter(int row, int column, String typed) {
        return Optional.empty();
    }

    @Override
    public Optional<String> paste(int row, int column, String text) {
        return Optional.empty();
    }

    @Override
    public void remove(int row) {
        // A blank is taken away by its own link, not by a slip of the keys.
    }

    @Override
    public Place next(int row, int column) {
        return new Place(row, column);
    }
}
