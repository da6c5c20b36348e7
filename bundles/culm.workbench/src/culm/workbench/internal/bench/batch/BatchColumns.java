package culm.workbench.internal.bench.batch;

import java.util.ArrayList;
import java.util.List;

import culm.bench.batch.Dimension;
import culm.workbench.internal.bench.grid.GridColumn;

/** The columns of a batch's table: readings as often as they are repeated, what comes of them, and words. */
final class BatchColumns {
    static final String LABEL = "staple";
    static final String TIE = "tie";
    static final String TURNS = "turns";
    static final String ASIDE = "setAside";
    static final String NOTES = "notes";

    /** Which reading stands in a column. */
    record Reading(Dimension dimension, int number) {
    }

    private final List<GridColumn> columns = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    /** @param lengths the sign of the unit in which lengths are shown; @param repeats how many readings of each dimension have a column, in their order */
    BatchColumns(String lengths, int... repeats) {
        add(new GridColumn(LABEL, "staple", "", "What is written on the staple, or its place in the box.", 48, false, true), null);
        for (Dimension dimension : Dimension.values()) {
            for (int i = 0; i < repeats[dimension.ordinal()]; i++) {
                add(new GridColumn(id(dimension, i), dimension.label() + (i == 0 ? "" : " " + (i + 1)), lengths, dimension.help(), i == 0 ? 66 : 78, true, true), new Reading(dimension, i));
            }
        }
        add(new GridColumn(TIE, "tie at", lengths, "The tie length of its setting.", 50, true, false), null);
        add(new GridColumn(TURNS, "turns", "left", "Turns left that the model expects at that tie length.", 42, true, false), null);
        add(new GridColumn(ASIDE, "set aside because", "", "A reason keeps the staple out of every setting.", 112, false, true), null);
        add(new GridColumn(NOTES, "notes", "", "Anything else.", 84, false, true), null);
    }

    static String id(Dimension dimension, int number) {
        return switch (dimension) {
            case LENGTH -> "length";
            case TOP_WIDE -> "wide";
            case TOP_NARROW -> "narrow";
        } + (number == 0 ? "" : number + 1);
    }

    private void add(GridColumn column, Reading reading) {
        columns.add(column);
        readings.add(reading);
    }

    List<GridColumn> all() {
        return columns;
    }

    GridColumn get(int column) {
        return columns.get(column);
    }

    /** The reading of a column; null where there is none. */
    Reading reading(int column) {
        return readings.get(column);
    }

    int firstReading() {
        return 1;
    }

    /** The next column that holds one of the first few readings; -1 behind the last. */
    int readingAfter(int column, int few) {
        for (int c = column + 1; c < columns.size(); c++) {
            if (readings.get(c) != null && readings.get(c).number() < few) {
                return c;
            }
        }
        return -1;
    }
}
