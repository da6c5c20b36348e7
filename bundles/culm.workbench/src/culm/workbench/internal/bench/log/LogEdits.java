package culm.workbench.internal.bench.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EStructuralFeature;

import culm.bench.log.LogMeasure;
import culm.bench.log.LogModel;
import culm.bench.log.Tied;
import culm.model.How;
import culm.model.LogEntry;
import culm.model.ModelFactory;
import culm.model.ModelPackage.Literals;
import culm.model.Quantity;
import culm.model.ReedLog;
import culm.model.text.Ids;
import culm.model.text.Numbers;
import culm.workbench.internal.bench.BenchSession;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** Changes a log, each change as one command. */
final class LogEdits {
    private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final double MOST_TURNS = 60;
    private static final NumberForm TURNS = new NumberForm(culm.geometry.profile.Quantity.COUNT, LengthUnit.MM, 1);
    private final BenchSession<ReedLog> session;

    LogEdits(BenchSession<ReedLog> session) {
        this.session = session;
    }

    ReedLog log() {
        return session.document();
    }

    private static String of(LogEntry entry) {
        return entry.getNumber() == null ? "" : " of blank " + entry.getNumber();
    }

    /** Sets a feature, or takes it away. @param value null takes it away */
    Optional<String> set(LogEntry entry, LogField field, Object value) {
        return session.tryChange(field.words() + of(entry), log -> {
            if (value == null) {
                entry.eUnset(field.feature());
            } else {
                entry.eSet(field.feature(), value);
            }
        });
    }

    /** Takes what was typed. @return why it cannot be taken */
    Optional<String> type(LogEntry entry, LogField field, String typed, NumberForm lengths) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return set(entry, field, null);
        }
        if (field.feature() == Literals.LOG_ENTRY__NUMBER && others(entry).anyMatch(e -> text.equals(e.getNumber()))) {
            return Optional.of("Number " + text + " is that of another blank of this log; the next free one is " + nextNumber() + ".");
        }
        try {
            return switch (field.kind()) {
                case DATE -> set(entry, field, day(text));
                case LENGTH -> length(entry, field, lengths.parse(text), lengths);
                case TURNS -> number(entry, field, turns(text));
                default -> set(entry, field, text);
            };
        } catch (NumberFormatException e) {
            return Optional.of(e.getMessage());
        } catch (DateTimeException e) {
            return Optional.of("\"" + text + "\" is no day; write 2026-03-09 or 9.3.2026.");
        }
    }

    private static LocalDate day(String text) {
        Matcher dotted = DOTTED.matcher(text);
        return dotted.matches() ? LocalDate.of(Integer.parseInt(dotted.group(3)), Integer.parseInt(dotted.group(2)), Integer.parseInt(dotted.group(1))) : LocalDate.parse(text);
    }

    private static double turns(String text) {
        String bare = text.replaceAll("(?i)\\s*turns?$", "").replace('\u2212', '-');
        try {
            return Numbers.parseTyped(bare);
        } catch (NumberFormatException e) {
            throw new NumberFormatException("\"" + bare + "\" " + e.getMessage() + ".");
        }
    }

    /** What is doubtful in a field as it stands; empty when nothing is. @param unit in what lengths are written */
    Optional<String> doubt(LogEntry entry, LogField field, LengthUnit unit) {
        if (field.feature() == Literals.LOG_ENTRY__NUMBER) {
            long same = entry.getNumber() == null ? 0 : others(entry).filter(e -> entry.getNumber().equals(e.getNumber())).count();
            return same == 0 ? Optional.empty() : Optional.of((same + 1) + " blanks of this log have the number " + entry.getNumber() + ".");
        }
        Quantity now = field.kind() == LogField.Kind.LENGTH ? (Quantity) entry.eGet(field.feature()) : null;
        if (now == null || !now.isSetValue()) {
            return Optional.empty();
        }
        LogMeasure measure = LogMeasure.of(field.feature()).orElseThrow();
        List<Tied> others = others(entry).map(LogModel::read).toList();
        return measure.refusal(now.getValue(), others).or(() -> measure.doubt(now.getValue(), others)).map(unit.drawn()::told);
    }

    private Stream<LogEntry> others(LogEntry entry) {
        return log().getEntries().stream().filter(e -> e != entry);
    }

    private Optional<String> length(LogEntry entry, LogField field, double value, NumberForm form) {
        Optional<String> refused = LogMeasure.of(field.feature()).orElseThrow().refusal(value, others(entry).map(LogModel::read).toList());
        return refused.isPresent() ? refused.map(form.unit().drawn()::told) : put(entry, field, value);
    }

    private Optional<String> number(LogEntry entry, LogField field, double value) {
        return Math.abs(value) <= MOST_TURNS ? put(entry, field, value)
                : Optional.of("The " + field.words() + " " + TURNS.asGiven(value) + " is outside " + TURNS.range(-MOST_TURNS, MOST_TURNS, " to ") + ".");
    }

    private Optional<String> put(LogEntry entry, LogField field, double value) {
        Quantity before = (Quantity) entry.eGet(field.feature());
        return session.tryChange(field.words() + of(entry), log -> {
            Quantity quantity = before == null ? ModelFactory.eINSTANCE.createQuantity() : before;
            quantity.setValue(value);
            quantity.setHow(How.MEASURED);
            entry.eSet(field.feature(), quantity);
        });
    }

    /** A new blank, with what rarely changes taken over from the last one. */
    Optional<LogEntry> add(LocalDate today) {
        LogEntry entry = ModelFactory.eINSTANCE.createLogEntry();
        int size = log().getEntries().size();
        if (size > 0) {
            LogEntry last = log().getEntries().get(size - 1);
            for (EStructuralFeature kept : LogField.KEPT) {
                if (last.eIsSet(kept)) {
                    entry.eSet(kept, last.eGet(kept));
                }
            }
        }
        entry.setNumber(nextNumber());
        entry.setId(Ids.of("no-" + entry.getNumber(), "blank", ids()));
        entry.setTiedOn(today);
        return session.tryChange("blank " + entry.getNumber(), log -> log.getEntries().add(entry)).isEmpty() ? Optional.of(entry) : Optional.empty();
    }

    private List<String> ids() {
        List<String> ids = new ArrayList<>();
        log().getEntries().forEach(e -> ids.add(e.getId()));
        return ids;
    }

    private String nextNumber() {
        return String.valueOf(1 + log().getEntries().stream().map(LogEntry::getNumber).filter(n -> n != null && n.matches("\\d{1,8}")).mapToInt(Integer::parseInt).max().orElse(0));
    }

    void remove(LogEntry entry) {
        session.tryChange("without blank " + entry.getNumber(), log -> log.getEntries().remove(entry));
    }

    /** Takes the blanks of a table; a number that is in the log already is left as it is. @return how many were taken, and how many were there */
    int[] take(List<Tied> table) {
        List<String> ids = ids();
        int[] counts = new int[2];
        session.tryChange("blanks of a table", log -> {
            List<String> known = new ArrayList<>();
            log.getEntries().forEach(e -> known.add(e.getNumber()));
            for (Tied tied : table) {
                boolean there = known.contains(tied.number());
                counts[there ? 1 : 0]++;
                if (!there) {
                    log.getEntries().add(LogModel.write(tied, ids));
                }
            }
        });
        return counts;
    }
}
