package culm.bench.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.model.Batch;
import culm.model.ModelFactory;
import culm.model.How;
import culm.model.MeasuredStaple;
import culm.model.Quantity;
import culm.model.text.Ids;

/** Between a batch's file and a batch as it is computed. */
public final class BatchModel {
    private BatchModel() {
    }

    /** The batch of a file. @param wrapBelowTop what holds where the file does not say how far the wrap stops below the top, mm */
    public static StapleBatch read(Batch file, double wrapBelowTop) {
        List<StapleReadings> staples = new ArrayList<>();
        for (MeasuredStaple staple : file.getStaples()) {
            String label = staple.getLabel() == null || staple.getLabel().isBlank() ? staple.getId() : staple.getLabel();
            staples.add(new StapleReadings(text(label), staple.getLengths(), staple.getTopWides(), staple.getTopNarrows(), text(staple.getSetAside()), text(staple.getNotes())));
        }
        return new StapleBatch(text(file.getName()), staples, new Caliper(value(file.getCaliperError()).orElse(Caliper.ASSUMED.largestError())),
                value(file.getWrapBelowTop()).orElse(wrapBelowTop), splitBy(file));
    }

    /** How a file's batch is to be split; as usual where it does not say. */
    public static SplitBy splitBy(Batch file) {
        return new SplitBy(value(file.getTieStep()).orElse(SplitBy.USUAL.step()), value(file.getTurnsToSpare()).orElse(SplitBy.USUAL.margin()));
    }

    /** A new file's content. @param id of the document */
    public static Batch write(StapleBatch batch, String id) {
        Batch file = ModelFactory.eINSTANCE.createBatch();
        file.setId(id);
        file.setName(batch.name());
        file.setCaliperError(quantity(batch.caliper().largestError()));
        file.setWrapBelowTop(quantity(batch.wrapBelowTop()));
        if (batch.by().step() != SplitBy.USUAL.step()) {
            file.setTieStep(chosen(batch.by().step()));
        }
        if (batch.by().margin() != SplitBy.USUAL.margin()) {
            file.setTurnsToSpare(chosen(batch.by().margin()));
        }
        List<String> taken = new ArrayList<>();
        for (StapleReadings readings : batch.staples()) {
            MeasuredStaple staple = ModelFactory.eINSTANCE.createMeasuredStaple();
            staple.setId(Ids.of("s-" + readings.label(), "staple", taken));
            taken.add(staple.getId());
            staple.setLabel(readings.label());
            staple.getLengths().addAll(readings.lengths());
            staple.getTopWides().addAll(readings.wides());
            staple.getTopNarrows().addAll(readings.narrows());
            staple.setSetAside(readings.setAside().isBlank() ? null : readings.setAside());
            staple.setNotes(readings.notes().isBlank() ? null : readings.notes());
            file.getStaples().add(staple);
        }
        return file;
    }

    /** A number that is chosen, neither measured nor assumed. */
    public static Quantity chosen(double value) {
        Quantity quantity = ModelFactory.eINSTANCE.createQuantity();
        quantity.setValue(value);
        return quantity;
    }

    private static Quantity quantity(double value) {
        Quantity quantity = chosen(value);
        quantity.setHow(How.MEASURED);
        return quantity;
    }

    private static OptionalDouble value(Quantity quantity) {
        return quantity == null || !quantity.isSetValue() ? OptionalDouble.empty() : OptionalDouble.of(quantity.getValue());
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
