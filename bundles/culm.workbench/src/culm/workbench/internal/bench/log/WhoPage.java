package culm.workbench.internal.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.log.GroupStats;
import culm.bench.log.LogSummary;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Role;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.bench.page.NoteList;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.ScrollPage;

/** What is drying, what goes to whom, and which blanks are furthest from their plan. */
final class WhoPage extends Composite {
    private static final int NAMED = 15;
    private final ScrollPage page;
    private final NoteList notes;
    private final Units units;
    private Consumer<Tied> choose = tied -> { };

    WhoPage(Composite parent, Look look, Units units) {
        super(parent, SWT.NONE);
        this.units = units;
        setLayout(new FillLayout());
        look.dress(this, Role.PAPER, Role.INK);
        page = new ScrollPage(this, look);
        notes = new NoteList(page.content(), look);
    }

    /** What to do to show a blank. */
    void onChoose(Consumer<Tied> todo) {
        choose = todo;
    }

    /** Shows what comes of a log, lengths in the unit that is chosen now. */
    void show(List<Tied> log, LogShown shown) {
        LogSummary summary = LogSummary.of(log, LocalDate.now());
        List<Note> all = new ArrayList<>();
        all.add(Note.head("Drying"));
        summary.drying().stream().limit(NAMED).forEach(d -> all.add(blank(d.tied(),
                d.days() < 0 ? ", no date noted" : ", " + d.days() + (d.days() == 1 ? " day" : " days"))));
        rest(all, summary.drying().size(), "Nothing is drying.");
        all.add(Note.head("Keepers for nobody yet"));
        summary.unheld().stream().limit(NAMED).forEach(t -> all.add(blank(t, "")));
        rest(all, summary.unheld().size(), "None.");
        all.add(Note.head("Keepers by whom they are for"));
        summary.forWhom().forEach(g -> all.add(Note.text(g.group() + ": " + numbers(g, log))));
        rest(all, Math.min(NAMED, summary.forWhom().size()), "None.");
        all.add(Note.head("Furthest from the plan, measured less planned"));
        List<PlannedSeen> off = shown.compared().stream().filter(c -> c.turns().isPresent())
                .sorted(Comparator.comparingDouble((PlannedSeen c) -> Math.abs(c.turns().getAsDouble())).reversed()).toList();
        off.stream().limit(NAMED).forEach(c -> all.add(blank(c.tied(), ": turns " + Numbers.signed(Numbers.fixed(c.turns().getAsDouble(), 1)) + length(", tie ", c.tie())
                + length(", top of the wrap ", c.wrapTop()) + length(", finished ", c.finished()))));
        rest(all, off.size(), "No blank's design is known, or no turns were noted.");
        shown.problems().forEach(p -> all.add(Note.weak(p)));
        notes.show(all);
        page.fit();
    }

    private static String numbers(GroupStats group, List<Tied> log) {
        List<String> numbers = log.stream().filter(t -> t.seen().keeper().orElse(false) && t.madeFor().equalsIgnoreCase(group.group())).map(Tied::number).limit(NAMED).toList();
        return "no. " + String.join(", ", numbers) + (group.blanks() > numbers.size() ? ", …" : "");
    }

    private Note blank(Tied tied, String more) {
        return Note.text("no. " + tied.number() + (tied.by().isEmpty() ? "" : ", tied by " + tied.by()) + more).does("show", () -> choose.accept(tied));
    }

    private static void rest(List<Note> all, int count, String none) {
        if (count == 0) {
            all.add(Note.weak(none));
        } else if (count > NAMED) {
            all.add(Note.weak("and " + (count - NAMED) + " more"));
        }
    }

    private String length(String what, OptionalDouble value) {
        Lengths unit = units.now().drawn();
        return value.isEmpty() ? "" : what + Numbers.signed(unit.fixed(value.getAsDouble(), 1)) + " " + unit.sign();
    }

    NoteList notes() {
        return notes;
    }
}
