package culm.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.model.Ends;
import culm.model.How;
import culm.model.LogEntry;
import culm.model.ModelFactory;
import culm.model.Quantity;
import culm.model.ReedLog;
import culm.model.Winding;
import culm.model.text.Ids;
import culm.model.text.Located;

/** Between a log's file and blanks as they are computed. */
public final class LogModel {
    private LogModel() {
    }

    /** The blanks of a file, in its order. */
    public static List<Tied> read(ReedLog file) {
        return file.getEntries().stream().map(LogModel::read).toList();
    }

    /** One blank. */
    public static Tied read(LogEntry e) {
        Seen seen = new Seen(value(e.getStapleLength()), value(e.getTieLength()), value(e.getWrapTop()), value(e.getTurnsLeftOnLeft()), value(e.getTurnsLeftOnRight()),
                e.isSetLeakFolded() ? Optional.of(Leak.valueOf(e.getLeakFolded().getName().toUpperCase(java.util.Locale.ROOT))) : Optional.empty(),
                e.isSetLeakCut() ? Optional.of(Leak.valueOf(e.getLeakCut().getName().toUpperCase(java.util.Locale.ROOT))) : Optional.empty(),
                e.isSetStraight() ? Optional.of(e.isStraight()) : Optional.empty(), value(e.getFinishedLength()),
                e.isSetKeeper() ? Optional.of(e.isKeeper()) : Optional.empty());
        TiedHow how = new TiedHow(e.isSetWinding() ? e.getWinding().getLiteral() : "", text(e.getCaneHeld()), e.isSetEnds() ? e.getEnds().getLiteral() : "",
                e.isSetWire() ? Optional.of(e.isWire()) : Optional.empty(), text(e.getSealing()));
        TiedFrom from = new TiedFrom(text(e.getDesign()), text(e.getStaple()), text(e.getStapleBatch()), text(e.getGouge()), text(e.getCaneBatch()), text(e.getShape()),
                text(e.getThread()));
        return new Tied(text(e.getNumber()), Optional.ofNullable(e.getTiedOn()), text(e.getTiedBy()), text(e.getMadeFor()), from, how, seen, text(e.getRemarks()),
                Located.lineOf(e));
    }

    /** A new entry. @param taken ids not to give again; the new one is added */
    public static LogEntry write(Tied tied, List<String> taken) {
        LogEntry e = ModelFactory.eINSTANCE.createLogEntry();
        e.setId(Ids.of("no-" + tied.number(), "blank", taken));
        taken.add(e.getId());
        e.setNumber(orNull(tied.number()));
        tied.on().ifPresent(e::setTiedOn);
        e.setTiedBy(orNull(tied.by()));
        e.setMadeFor(orNull(tied.madeFor()));
        e.setDesign(orNull(tied.from().design()));
        e.setStaple(orNull(tied.from().staple()));
        e.setStapleBatch(orNull(tied.from().stapleBatch()));
        e.setGouge(orNull(tied.from().gouge()));
        e.setCaneBatch(orNull(tied.from().caneBatch()));
        e.setShape(orNull(tied.from().shape()));
        e.setThread(orNull(tied.from().thread()));
        Optional.ofNullable(Winding.get(tied.how().winding())).ifPresent(e::setWinding);
        e.setCaneHeld(orNull(tied.how().caneHeld()));
        Optional.ofNullable(Ends.get(tied.how().ends())).ifPresent(e::setEnds);
        tied.how().wire().ifPresent(e::setWire);
        e.setSealing(orNull(tied.how().sealing()));
        Seen seen = tied.seen();
        e.setStapleLength(quantity(seen.stapleLength()));
        e.setTieLength(quantity(seen.tie()));
        e.setTurnsLeftOnLeft(quantity(seen.left()));
        e.setTurnsLeftOnRight(quantity(seen.right()));
        e.setWrapTop(quantity(seen.wrapTop()));
        seen.folded().ifPresent(l -> e.setLeakFolded(culm.model.Leak.get(l.word())));
        seen.cut().ifPresent(l -> e.setLeakCut(culm.model.Leak.get(l.word())));
        seen.straight().ifPresent(e::setStraight);
        e.setFinishedLength(quantity(seen.finished()));
        seen.keeper().ifPresent(e::setKeeper);
        e.setRemarks(orNull(tied.remarks()));
        return e;
    }

    /** A new file's content. @param id of the document; @param name its name */
    public static ReedLog write(List<Tied> log, String id, String name) {
        ReedLog file = ModelFactory.eINSTANCE.createReedLog();
        file.setId(id);
        file.setName(name);
        List<String> taken = new ArrayList<>();
        log.forEach(t -> file.getEntries().add(write(t, taken)));
        return file;
    }

    private static OptionalDouble value(Quantity quantity) {
        return quantity == null || !quantity.isSetValue() ? OptionalDouble.empty() : OptionalDouble.of(quantity.getValue());
    }

    private static Quantity quantity(OptionalDouble value) {
        if (value.isEmpty()) {
            return null;
        }
        Quantity quantity = ModelFactory.eINSTANCE.createQuantity();
        quantity.setValue(value.getAsDouble());
        quantity.setHow(How.MEASURED);
        return quantity;
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    private static String orNull(String text) {
        return text.isBlank() ? null : text;
    }
}
