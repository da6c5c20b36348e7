package culm.workbench.internal.bench.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import culm.bench.learn.LearnChart;
import culm.bench.learn.Learned;
import culm.bench.learn.LearnedText;
import culm.blank.rules.Severity;
import culm.design.Bridge;
import culm.figures.Role;
import culm.model.FitData;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.bench.page.DrawingCanvas;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.bench.page.NoteList;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.widgets.ScrollPage;

/** What the log teaches, group by group, and its use in a design. */
final class LearnPage extends Composite {
    private static final double HIGH = 190;
    private final Look look;
    private final Units units;
    private final LearnUse use;
    private final Consumer<FileProblemException> refused;
    private final ScrollPage page;
    private final List<NoteList> lists = new ArrayList<>();
    private LogShown shown = LogShown.NOTHING;

    LearnPage(Composite parent, Look look, Units units, LearnUse use, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.look = look;
        this.units = units;
        this.use = use;
        this.refused = refused;
        setLayout(new FillLayout());
        look.dress(this, Role.PAPER, Role.INK);
        page = new ScrollPage(this, look);
    }

    /** Shows what a log teaches, lengths in the unit that is chosen now. */
    void show(LogShown now) {
        shown = now;
        for (Control child : page.content().getChildren()) {
            child.dispose();
        }
        lists.clear();
        if (now.learned().isEmpty()) {
            list(List.of(Note.text("There is nothing to learn from yet: blanks whose design and turns left are noted.")));
        }
        now.learned().forEach(this::group);
        if (now.learned().stream().anyMatch(Learned::said)) {
            list(List.of(Note.head("What the log cannot tell apart"), Note.text(Learned.CANNOT_SEPARATE)));
        }
        list(now.problems().stream().map(Note::weak).toList());
        page.fit();
    }

    private void list(List<Note> notes) {
        NoteList list = new NoteList(page.content(), look);
        list.show(notes);
        lists.add(list);
    }

    private void group(Learned learned) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.head(learned.group().text()));
        List<String> lines = LearnedText.told(learned).stream().map(units.now().drawn()::told).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).replaceAll("(?<= )-(?=\\d)", "\u2212");
            Note note = Note.text(Character.toUpperCase(line.charAt(0)) + line.substring(1) + (line.endsWith(".") ? "" : "."));
            boolean last = i == lines.size() - 1;
            notes.add(last && learned.said() ? note.signed(learned.worthIt() ? Severity.FINE : Severity.ADVICE) : note);
        }
        use.designs(learned).forEach(design -> design(learned, design, notes));
        list(notes);
        if (learned.said()) {
            new DrawingCanvas(page.content(), look).show((width, measure) -> Optional.of(LearnChart.draw(learned, width, HIGH, measure)));
        }
    }

    private void design(Learned learned, Path design, List<Note> notes) {
        String name = design.getFileName().toString();
        Optional<FitData> inUse = use.inUse(design);
        inUse.ifPresent(fit -> notes.add(Note.strong(name + " uses " + words(fit.getBlank()) + ".").signed(Severity.FINE).does("drop it", () -> run(() -> use.drop(design)))));
        if (learned.worthIt()) {
            notes.add(Note.text(inUse.isPresent() ? "Or use this in " + name + "." : name + " does not use it.").does("use it in " + name, () -> run(() -> use.use(learned, design))));
        }
    }

    private static String words(String blank) {
        String given = blank == null ? "" : blank.strip();
        return given.startsWith(Bridge.LEARNED) ? "what was " + given : "a fit to a blank that worked" + (given.isEmpty() ? "" : ": " + given);
    }

    private void run(Attempt attempt) {
        Attempt.at(attempt, refused);
        getDisplay().asyncExec(() -> {
            if (!isDisposed()) {
                show(shown);
            }
        });
    }

    /** {@return every note, top to bottom} */
    List<Note> notes() {
        return lists.stream().flatMap(l -> l.notes().stream()).toList();
    }
}
