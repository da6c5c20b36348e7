package culm.workbench.internal.bench.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import culm.bench.batch.BatchModel;
import culm.bench.batch.Dimension;
import culm.bench.batch.StapleBatch;
import culm.bench.batch.StapleReadings;
import culm.model.Batch;
import culm.model.How;
import culm.model.MeasuredStaple;
import culm.model.ModelFactory;
import culm.model.Quantity;
import culm.model.text.Ids;
import culm.workbench.internal.bench.BenchSession;
import culm.workbench.internal.numbers.NumberForm;

/** Changes a batch, each change as one command. */
final class BatchEdits {
    private static final double SMALLEST = 0.2;
    private static final double LARGEST = 200;
    private final BenchSession<Batch> session;

    BatchEdits(BenchSession<Batch> session) {
        this.session = session;
    }

    Batch batch() {
        return session.document();
    }

    /** {@return whether the batch may only be looked at} */
    boolean locked() {
        return session.readOnly().isPresent();
    }

    static String label(MeasuredStaple staple) {
        return staple.getLabel() == null || staple.getLabel().isBlank() ? String.valueOf(staple.getId()) : staple.getLabel();
    }

    static List<Double> readings(MeasuredStaple staple, Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> staple.getLengths();
            case TOP_WIDE -> staple.getTopWides();
            case TOP_NARROW -> staple.getTopNarrows();
        };
    }

    /** One reading. @param form in what it was typed; @return why it cannot be taken */
    Optional<String> reading(int row, BatchColumns.Reading reading, double value, NumberForm form) {
        Optional<String> wrong = refuse(reading.dimension(), value, form);
        return wrong.isPresent() ? wrong : session.tryChange(reading.dimension().label() + " of staple " + nameOf(row), b -> put(staple(b, row), reading, value));
    }

    static Optional<String> refuse(Dimension dimension, double value, NumberForm form) {
        return value >= SMALLEST && value <= LARGEST ? Optional.empty()
                : Optional.of("The " + dimension.label() + " " + form.asGiven(value) + " " + form.sign() + " is no measure of a staple.");
    }

    static void put(MeasuredStaple staple, BatchColumns.Reading reading, double value) {
        List<Double> values = readings(staple, reading.dimension());
        if (reading.number() < values.size()) {
            values.set(reading.number(), value);
        } else {
            values.add(value);
        }
    }

    Optional<String> forget(int row, BatchColumns.Reading reading) {
        boolean there = row < batch().getStaples().size() && reading.number() < readings(batch().getStaples().get(row), reading.dimension()).size();
        return there ? session.tryChange(reading.dimension().label() + " of staple " + nameOf(row), b -> readings(b.getStaples().get(row), reading.dimension()).remove(reading.number()))
                : Optional.empty();
    }

    /** The label, the reason it is set aside, or the notes. */
    Optional<String> word(int row, String column, String text) {
        if (column.equals(BatchColumns.LABEL)) {
            for (int i = 0; i < batch().getStaples().size(); i++) {
                if (i != row && label(batch().getStaples().get(i)).equalsIgnoreCase(text)) {
                    return Optional.of("There is a staple " + text + " already, in row " + (i + 1) + ". Two staples need two names.");
                }
            }
        }
        return session.tryChange(column.equals(BatchColumns.LABEL) ? "name of a staple" : column.equals(BatchColumns.ASIDE) ? "set aside" : "notes", b -> {
            MeasuredStaple staple = staple(b, row);
            String now = text.isEmpty() ? null : text;
            switch (column) {
                case BatchColumns.LABEL -> staple.setLabel(now);
                case BatchColumns.ASIDE -> staple.setSetAside(now);
                default -> staple.setNotes(now);
            }
        });
    }

    void remove(int row) {
        session.tryChange("without staple " + nameOf(row), b -> b.getStaples().remove(row));
    }

    private String nameOf(int row) {
        return row < batch().getStaples().size() ? label(batch().getStaples().get(row)) : nextLabel(batch());
    }

    /** The staple of a row, made when the row is the empty one. */
    static MeasuredStaple staple(Batch batch, int row) {
        while (batch.getStaples().size() <= row) {
            add(batch, nextLabel(batch));
        }
        return batch.getStaples().get(row);
    }

    private static MeasuredStaple add(Batch batch, String label) {
        Set<String> taken = new HashSet<>();
        batch.getStaples().forEach(s -> taken.add(s.getId()));
        List<MeasuredStaple> more = new ArrayList<>();
        MeasuredStaple staple = made(label, taken, more);
        batch.getStaples().add(staple);
        return staple;
    }

    /** A staple with an id of its own. @param taken ids not to give again; the new one is added */
    private static MeasuredStaple made(String label, Set<String> taken, List<MeasuredStaple> more) {
        MeasuredStaple staple = ModelFactory.eINSTANCE.createMeasuredStaple();
        staple.setId(Ids.of("s-" + label, "staple", taken));
        staple.setLabel(label);
        taken.add(staple.getId());
        more.add(staple);
        return staple;
    }

    /** One more than the last number; a number that is free where the last has none. */
    static String nextLabel(Batch batch) {
        int size = batch.getStaples().size();
        String last = size == 0 ? "0" : label(batch.getStaples().get(size - 1));
        int number = last.matches("\\d{1,6}") ? Integer.parseInt(last) + 1 : size + 1;
        while (taken(batch, String.valueOf(number))) {
            number++;
        }
        return String.valueOf(number);
    }

    private static boolean taken(Batch batch, String label) {
        return batch.getStaples().stream().anyMatch(s -> label(s).equals(label));
    }

    /** Several changes as one. */
    Optional<String> all(String label, Consumer<Batch> change) {
        return session.tryChange(label, change);
    }

    /** Takes the staples of a table: those that are there are measured anew, the others come on. @return how many came on, and how many were replaced */
    Optional<String> take(StapleBatch table, boolean whole, int[] counts) {
        return session.tryChange("staples of a table", b -> {
            Map<String, MeasuredStaple> known = new HashMap<>();
            b.getStaples().forEach(s -> known.putIfAbsent(label(s).toLowerCase(Locale.ROOT), s));
            Set<String> taken = new HashSet<>();
            b.getStaples().forEach(s -> taken.add(s.getId()));
            List<MeasuredStaple> more = new ArrayList<>();
            for (StapleReadings read : table.staples()) {
                MeasuredStaple there = known.get(read.label().toLowerCase(Locale.ROOT));
                counts[there != null ? 1 : 0]++;
                fill(there != null ? there : made(read.label(), taken, more), read);
            }
            b.getStaples().addAll(more);
            if (whole) {
                b.setCaliperError(quantity(b.getCaliperError(), table.caliper().largestError()));
                b.setWrapBelowTop(quantity(b.getWrapBelowTop(), table.wrapBelowTop()));
                if (!table.by().equals(BatchModel.splitBy(b))) {
                    b.setTieStep(BatchModel.chosen(table.by().step()));
                    b.setTurnsToSpare(BatchModel.chosen(table.by().margin()));
                }
            }
        });
    }

    private static void fill(MeasuredStaple staple, StapleReadings read) {
        for (Dimension dimension : Dimension.values()) {
            List<Double> values = readings(staple, dimension);
            values.clear();
            values.addAll(read.readings(dimension));
        }
        staple.setSetAside(read.setAside().isBlank() ? null : read.setAside());
        staple.setNotes(read.notes().isBlank() ? null : read.notes());
    }

    static Quantity quantity(Quantity before, double value) {
        Quantity quantity = before == null ? ModelFactory.eINSTANCE.createQuantity() : before;
        quantity.setValue(value);
        quantity.setHow(How.MEASURED);
        return quantity;
    }

    Optional<String> design(String address) {
        return session.tryChange("the design of the batch", b -> b.setDesign(address));
    }

    Optional<String> caliper(double value) {
        return session.tryChange("caliper", b -> b.setCaliperError(quantity(b.getCaliperError(), value)));
    }

    Optional<String> wrapBelowTop(double value) {
        return session.tryChange("wrap below the top", b -> b.setWrapBelowTop(quantity(b.getWrapBelowTop(), value)));
    }

    Optional<String> tieStep(double value) {
        return session.tryChange("steps of the ties", b -> b.setTieStep(BatchModel.chosen(value)));
    }

    Optional<String> turnsToSpare(double value) {
        return session.tryChange("turns to spare", b -> b.setTurnsToSpare(BatchModel.chosen(value)));
    }
}
