package culm.workbench.internal.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.log.PlannedTable;
import culm.bench.log.Tied;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.GeometryException;
import culm.model.LogEntry;
import culm.workbench.internal.bench.page.DrawingCanvas;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.bench.page.NoteList;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.ScrollPage;

/** One blank: all its fields, and beside them what was planned against what was measured. */
final class BlankPage extends Composite {
    private static final String HINT = "Enter goes on to the next field. Arrow down in a field of words offers what was written before.";
    private final Look look;
    private final LogForm form;
    private final ScrollPage side;
    private final DrawingCanvas table;
    private final NoteList notes;
    private final Label said;
    private final Runnable begin;
    private Runnable wrong = () -> { };
    private Runnable remove = () -> { };

    BlankPage(Composite parent, Look look, java.util.function.Function<Composite, LogForm> makeForm, Runnable begin) {
        super(parent, SWT.NONE);
        this.look = look;
        this.begin = begin;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        form = makeForm.apply(this);
        GridData left = new GridData(SWT.FILL, SWT.FILL, true, true);
        left.widthHint = 600;
        form.setLayoutData(left);
        side = new ScrollPage(form.right(), look);
        GridData right = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        right.verticalIndent = 10;
        right.heightHint = 120;
        side.setLayoutData(right);
        table = new DrawingCanvas(side.content(), look).following(form.workshop().units());
        notes = new NoteList(side.content(), look);
        said = new Label(this, SWT.WRAP);
        said.setFont(look.font(Size.SMALL, SWT.NORMAL));
        GridData below = new GridData(SWT.FILL, SWT.END, true, false);
        below.horizontalIndent = 8;
        below.widthHint = 400;
        said.setLayoutData(below);
        look.onChange(said, this::dress);
        form.onSay(this::say);
        say("");
    }

    /** What to do to hear what went wrong, and to take the blank away. */
    void on(Runnable askWrong, Runnable takeAway) {
        wrong = askWrong;
        remove = takeAway;
    }

    private void say(String sentence) {
        said.setText(sentence.isEmpty() ? HINT : sentence);
        dress();
        layout();
    }

    private void dress() {
        said.setBackground(look.colour(Role.PAPER));
        said.setForeground(look.colour(said.getText().equals(HINT) ? Role.QUIET : Role.DOES_NOT));
    }

    LogForm form() {
        return form;
    }

    void show(Optional<LogEntry> entry) {
        form.show(entry);
    }

    /** Shows what comes of a blank. @param locked whether the log may only be looked at, so that no link changes it */
    void show(Optional<Tied> tied, LogShown shown, boolean locked) {
        List<Note> all = new ArrayList<>();
        if (tied.isEmpty()) {
            all.add(locked ? Note.text("No blank is chosen.") : Note.text("No blank is chosen.").does("new blank", begin));
        } else if (shown.planned().isEmpty()) {
            all.add(Note.text(tied.get().from().design().isEmpty() ? "Choose its design; then the plan stands here." : "Its design cannot be read."));
        }
        table.show((width, measure) -> {
            try {
                return tied.isEmpty() || shown.planned().isEmpty() ? Optional.empty() : Optional.of(PlannedTable.draw(tied.get(), shown.planned().get(), width, form.workshop().units().now().drawn()));
            } catch (GeometryException e) {
                return Optional.empty();
            }
        });
        if (tied.isPresent()) {
            if (shown.planned().isPresent()) {
                all.add(Note.text(tied.get().seen().turns().isPresent() ? "Not as planned?" : "Note the turns left on both sides; then it can be told what went wrong.")
                        .does("what went wrong", wrong));
            }
            if (tied.get().oneSided()) {
                all.add(Note.text("One side closed a turn or more before the other: crooked cane, not the tie length."));
            }
            if (!locked) {
                all.add(Note.text("A slip?").does("take this blank away", remove));
            }
        }
        shown.problems().forEach(p -> all.add(Note.weak(p)));
        notes.show(all);
        side.fit();
    }

    NoteList notes() {
        return notes;
    }
}
