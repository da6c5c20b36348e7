package culm.workbench.internal.parts;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.sharing.Attempt;

/** What a part is called, where it comes from, when it was measured, and notes. */
final class PartAbout extends Composite {
    private static final int NOTE_LINES = 4;
    private final PartsSession session;
    private final TextRow name;
    private final TextRow source;
    private final TextRow measuredOn;
    private final TextRow notes;
    private final Label wrong;
    private Part part;

    PartAbout(Composite parent, PartsSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.session = session;
        Look look = session.workshop().look();
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        name = new TextRow(this, look, "name", 1, typed -> set("name", typed, refused));
        source = new TextRow(this, look, "source", 1, typed -> set("source", typed, refused));
        measuredOn = new TextRow(this, look, "measured on", 1, typed -> day(typed, refused));
        measuredOn.hint("2026-03-31");
        notes = new TextRow(this, look, "notes", NOTE_LINES, typed -> set("notes", typed, refused));
        wrong = new Label(this, SWT.WRAP);
        wrong.setFont(look.font(Size.SMALL, SWT.NORMAL));
        look.dress(wrong, Role.PAPER, Role.DOES_NOT);
        wrong.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
    }

    private boolean set(String feature, Object value, Consumer<FileProblemException> refused) {
        Object kept = value instanceof String text && text.isBlank() ? null : value;
        return Attempt.at(() -> session.change(part, edits -> edits.set("", feature, kept), ""), refused);
    }

    private boolean day(String typed, Consumer<FileProblemException> refused) {
        try {
            LocalDate day = typed.isBlank() ? null : LocalDate.parse(typed);
            say("");
            return set("measuredOn", day, refused);
        } catch (DateTimeParseException e) {
            say("\"" + typed + "\" is no day; write it as 2026-03-31.");
            return false;
        }
    }

    private void say(String sentence) {
        wrong.setText(sentence);
        layout();
    }

    void show(Part now) {
        if (part != now) {
            say("");
        }
        part = now;
        setVisible(now != null);
        List.of(name, source, measuredOn, notes).forEach(row -> row.lock(session.readOnly().isPresent()));
        if (now != null) {
            name.show(Objects.requireNonNullElse(now.getName(), ""));
            source.show(Objects.requireNonNullElse(now.getSource(), ""));
            measuredOn.show(now.getMeasuredOn() == null ? "" : now.getMeasuredOn().toString());
            notes.show(Objects.requireNonNullElse(now.getNotes(), ""));
        }
    }

    TextRow name() {
        return name;
    }
}
