package culm.workbench.internal.bench.batch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.EList;

import culm.bench.batch.Dimension;
import culm.bench.batch.Doubt;
import culm.bench.batch.Served;
import culm.bench.batch.StapleReadings;
import culm.geometry.profile.Quantity;
import culm.model.MeasuredStaple;
import culm.workbench.internal.bench.grid.GridColumn;
import culm.workbench.internal.bench.grid.GridModel;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;

/** A batch's staples as rows of a grid. The last row is always empty; what is typed there becomes a new staple. */
final class BatchRows implements GridModel {
    private final BatchEdits edits;
    private final Units units;
    private BatchColumns columns;
    private int repeats = 1;
    private boolean down;
    private Map<String, Served> served = Map.of();
    private Map<String, Map<Dimension, String>> doubts = Map.of();
    private Map<String, String> aside = Map.of();

    BatchRows(BatchEdits edits, Units units) {
        this.edits = edits;
        this.units = units;
        fit();
    }

    /** How many readings of each kind have a column; never fewer than there are. */
    void repeats(int wanted) {
        repeats = wanted;
        fit();
    }

    /** As many columns as are wanted, or as there are readings. */
    void fit() {
        int[] counts = new int[Dimension.values().length];
        for (Dimension dimension : Dimension.values()) {
            int most = staples().stream().mapToInt(s -> BatchEdits.readings(s, dimension).size()).max().orElse(1);
            counts[dimension.ordinal()] = Math.max(repeats, most);
        }
        columns = new BatchColumns(units.now().sign(), counts);
    }

    int repeats() {
        return repeats;
    }

    /** Whether Enter goes down a column; otherwise along a row. */
    void down(boolean now) {
        down = now;
    }

    boolean down() {
        return down;
    }

    /** Shows what came of the readings. */
    void result(BatchShown shown) {
        Map<String, Served> now = new HashMap<>();
        shown.plan().ifPresent(p -> p.settings().forEach(s -> s.staples().forEach(one -> now.put(one.staple().label(), one))));
        served = now;
        Map<String, Map<Dimension, String>> found = new HashMap<>();
        for (Doubt doubt : shown.doubts()) {
            found.computeIfAbsent(doubt.staple().label(), k -> new HashMap<>()).merge(doubt.dimension(), doubt.told(), (a, b) -> a + " " + b);
        }
        doubts = found;
        Map<String, String> reasons = new HashMap<>();
        shown.plan().ifPresent(p -> p.aside().forEach(a -> reasons.put(a.staple().label(), a.told())));
        aside = reasons;
    }

    private EList<MeasuredStaple> staples() {
        return edits.batch().getStaples();
    }

    /** The row of a staple; -1 when there is none. */
    int row(StapleReadings staple) {
        for (int i = 0; i < staples().size(); i++) {
            if (BatchEdits.label(staples().get(i)).equals(staple.label())) {
                return i;
            }
        }
        return -1;
    }

    int column(Dimension dimension) {
        for (int c = 0; c < columns.all().size(); c++) {
            if (columns.reading(c) != null && columns.reading(c).dimension() == dimension) {
                return c;
            }
        }
        return 0;
    }

    private NumberForm form() {
        return NumberForm.of(Quantity.LENGTH, units.now(), 0);
    }

    @Override
    public List<GridColumn> columns() {
        return columns.all();
    }

    @Override
    public int rows() {
        return staples().size() + (locked() ? 0 : 1);
    }

    @Override
    public boolean locked() {
        return edits.locked();
    }

    @Override
    public String text(int row, int column) {
        if (row >= staples().size()) {
            return "";
        }
        MeasuredStaple staple = staples().get(row);
        BatchColumns.Reading reading = columns.reading(column);
        if (reading != null) {
            List<Double> values = BatchEdits.readings(staple, reading.dimension());
            return reading.number() < values.size() ? form().bare(values.get(reading.number())) : "";
        }
        String label = BatchEdits.label(staple);
        Served one = served.get(label);
        return switch (columns.get(column).id()) {
            case BatchColumns.LABEL -> BatchEdits.label(staple);
            case BatchColumns.TIE -> one == null ? aside.containsKey(label) ? "aside" : "" : new NumberForm(Quantity.LENGTH, units.now(), 1).bare(Math.rint(one.tie() * 10) / 10);
            case BatchColumns.TURNS -> one == null ? "" : culm.figures.Numbers.fixed(one.turnsLeft(), 1);
            case BatchColumns.ASIDE -> text(staple.getSetAside());
            default -> text(staple.getNotes());
        };
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    @Override
    public Optional<String> doubt(int row, int column) {
        return told(row, column).map(units.now().drawn()::told);
    }

    private Optional<String> told(int row, int column) {
        if (row >= staples().size()) {
            return Optional.empty();
        }
        String label = BatchEdits.label(staples().get(row));
        BatchColumns.Reading reading = columns.reading(column);
        if (reading != null) {
            boolean there = reading.number() < BatchEdits.readings(staples().get(row), reading.dimension()).size();
            return there ? Optional.ofNullable(doubts.getOrDefault(label, Map.of()).get(reading.dimension())) : Optional.empty();
        }
        return columns.get(column).id().equals(BatchColumns.TIE) && !quiet(row) ? Optional.ofNullable(aside.get(label)).filter(a -> !a.isBlank()) : Optional.empty();
    }

    @Override
    public boolean quiet(int row) {
        return row < staples().size() && !text(staples().get(row).getSetAside()).isBlank();
    }

    @Override
    public Optional<String> enter(int row, int column, String typed) {
        BatchColumns.Reading reading = columns.reading(column);
        if (reading == null) {
            return edits.word(row, columns.get(column).id(), typed.strip());
        }
        if (typed.isBlank()) {
            return edits.forget(row, reading);
        }
        try {
            return edits.reading(row, reading, form().parse(typed), form());
        } catch (NumberFormatException e) {
            return Optional.of(e.getMessage());
        }
    }

    @Override
    public Optional<String> paste(int row, int column, String text) {
        return new BatchPaste(edits, columns, form()).paste(row, column, text);
    }

    @Override
    public void remove(int row) {
        if (row < staples().size()) {
            edits.remove(row);
        }
    }

    @Override
    public Place next(int row, int column) {
        int last = rows() - 1;
        if (columns.reading(column) == null) {
            return columns.get(column).id().equals(BatchColumns.LABEL) ? new Place(row, columns.firstReading()) : new Place(Math.min(last, row + 1), column);
        }
        int after = columns.readingAfter(column, repeats);
        if (!down) {
            return after >= 0 ? new Place(row, after) : new Place(Math.min(last, row + 1), columns.firstReading());
        }
        // Down a column; only the first one makes new staples, the others end with the last staple and go on with the next column.
        boolean more = column == columns.firstReading() ? row < last : row < last - 1;
        return more ? new Place(row + 1, column) : after >= 0 ? new Place(0, after) : new Place(row, column);
    }
}
