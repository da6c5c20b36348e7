package culm.workbench.internal.bench.log;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.LogEntry;
import culm.model.ModelPackage.Literals;
import culm.model.ReedLog;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.BenchSession;
import culm.workbench.internal.bench.DesignChoice;

/** All fields of one blank, in two columns in the order of the work. Enter goes on to the next field. */
final class LogForm extends Composite {
    private final BenchSession<ReedLog> session;
    private final LogEdits edits;
    private final Composite right;
    private final List<FieldRow> rows = new ArrayList<>();
    private Optional<LogEntry> entry = Optional.empty();
    /** What was not taken of the blank that was shown before. */
    private Optional<String> left = Optional.empty();
    private Consumer<String> say = sentence -> { };

    LogForm(Composite parent, BenchSession<ReedLog> session, LogEdits edits) {
        super(parent, SWT.NONE);
        this.session = session;
        this.edits = edits;
        GridLayout layout = new GridLayout(2, true);
        layout.marginWidth = 8;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 16;
        setLayout(layout);
        workshop().look().dress(this, Role.PAPER, Role.INK);
        Composite left = column();
        group(left, LogField.BLANK);
        group(left, LogField.FROM);
        group(left, LogField.HOW);
        right = column();
        group(right, LogField.SEEN);
    }

    /** {@return the right column, where something more may stand below the fields} */
    Composite right() {
        return right;
    }

    private Composite column() {
        Composite column = new Composite(this, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 3;
        column.setLayout(layout);
        column.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        workshop().look().dress(column, Role.PAPER, Role.INK);
        return column;
    }

    private void group(Composite column, LogField.Group group) {
        Label head = new Label(column, SWT.NONE);
        head.setText(group.head());
        head.setFont(workshop().look().font(Size.HEADING, SWT.BOLD));
        workshop().look().dress(head, Role.PAPER, Role.INK);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        wide.verticalIndent = column.getChildren().length == 1 ? 2 : 6;
        head.setLayoutData(wide);
        group.fields().forEach(f -> rows.add(new FieldRow(column, f, this, () -> used(f))));
    }

    /** What was written before in this field, the newest first, and what the studio has. */
    private List<String> used(LogField field) {
        Set<String> used = new LinkedHashSet<>();
        List<LogEntry> all = new ArrayList<>(session.document().getEntries());
        Collections.reverse(all);
        if (field.feature() == Literals.LOG_ENTRY__NUMBER) {
            return List.of(); // each is another's
        }
        all.forEach(e -> Optional.ofNullable(e.eGet(field.feature())).map(Object::toString).ifPresent(used::add));
        if (field.feature() == Literals.LOG_ENTRY__STAPLE_BATCH) {
            for (StudioEntry batch : session.workshop().studio().of(session.studio()).of(FileKind.BATCH)) {
                used.add(DesignChoice.address(session.file(), batch.file()));
            }
        }
        return used.stream().limit(20).toList();
    }

    /** Who is told what cannot be taken; empty when all is well again. */
    void onSay(Consumer<String> todo) {
        say = todo;
    }

    /** Says why something was not taken, or else what is doubtful in the blank. */
    void told() {
        say.accept(Stream.concat(rows.stream().map(FieldRow::refused).filter(r -> !r.isEmpty()), rows.stream().map(FieldRow::doubt).flatMap(Optional::stream)).findFirst()
                .or(() -> left).orElse(""));
    }

    Workshop workshop() {
        return session.workshop();
    }

    BenchSession<ReedLog> session() {
        return session;
    }

    LogEdits edits() {
        return edits;
    }

    Optional<LogEntry> entry() {
        return entry;
    }

    /** Shows a blank. @param now empty for none */
    void show(Optional<LogEntry> now) {
        boolean other = !now.equals(entry);
        left = Optional.empty();
        if (other && entry.isPresent()) {
            settle();
            left = refusedOf(entry.get()); // it is lost with this, which is to be seen
            rows.forEach(FieldRow::another);
        }
        entry = now;
        rows.forEach(r -> r.enable(now.isPresent()));
        rows.forEach(FieldRow::changed);
        told();
    }

    private Optional<String> refusedOf(LogEntry before) {
        return rows.stream().map(FieldRow::refused).filter(r -> !r.isEmpty()).findFirst().map(r -> "Blank " + before.getNumber() + " was left as it is. " + r);
    }

    /** Takes over what is being typed. */
    void settle() {
        if (entry.isPresent()) {
            rows.forEach(FieldRow::settle);
        }
    }

    /** Goes on to the next field that is typed into. */
    void next(FieldRow from) {
        for (int i = rows.indexOf(from) + 1; i < rows.size(); i++) {
            if (rows.get(i).focus()) {
                return;
            }
        }
    }

    @Override
    public boolean setFocus() {
        return entry.isPresent() && rows.get(0).focus();
    }
}
