package culm.workbench.internal.bench.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.batch.BatchPlan;
import culm.bench.batch.Doubt;
import culm.bench.batch.SetAside;
import culm.bench.batch.Setting;
import culm.bench.batch.TieChart;
import culm.blank.rules.Say;
import culm.blank.rules.Severity;
import culm.figures.Role;
import culm.figures.Lengths;
import culm.workbench.internal.bench.page.DrawingCanvas;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.bench.page.NoteList;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.ScrollPage;

/** What comes of a batch: the settings, the staples set aside, the readings in doubt, and the drawing of them all. */
final class PlanPane extends Composite {
    private static final int NAMED = 12;
    private final Units units;
    private final ScrollPage page;
    private final NoteList notes;
    private final DrawingCanvas chart;
    private IntConsumer card = setting -> { };
    private Consumer<Doubt> look = doubt -> { };
    private Consumer<SetAside> find = aside -> { };

    PlanPane(Composite parent, Look look, Units units) {
        super(parent, SWT.NONE);
        this.units = units;
        setLayout(new FillLayout());
        look.dress(this, Role.PAPER, Role.INK);
        page = new ScrollPage(this, look);
        notes = new NoteList(page.content(), look);
        chart = new DrawingCanvas(page.content(), look);
    }

    /** What to do for the card of a setting. */
    void onCard(IntConsumer todo) {
        card = todo;
    }

    /** What to do to look at a reading in doubt, or at a staple that is set aside. */
    void onLook(Consumer<Doubt> doubt, Consumer<SetAside> aside) {
        look = doubt;
        find = aside;
    }

    /** Shows what came of a batch, lengths in the unit that is chosen now. */
    void show(BatchShown shown) {
        Lengths unit = units.now().drawn();
        List<Note> all = new ArrayList<>();
        shown.plan().ifPresent(p -> settings(p, shown, all, unit));
        shown.plan().ifPresent(p -> aside(p, all, unit));
        doubts(shown.doubts(), all, unit);
        notes.show(all);
        chart.show((width, measure) -> shown.plan().filter(p -> p.served() > 0).map(p -> TieChart.draw(p, width, measure, unit)));
        page.fit();
    }

    private void settings(BatchPlan plan, BatchShown shown, List<Note> all, Lengths unit) {
        for (int i = 0; i < Math.min(NAMED, plan.settings().size()); i++) {
            Setting s = plan.settings().get(i);
            int number = i;
            all.add(new Note(Note.Kind.STRONG, Optional.of(shown.mayNotFit(s) ? Severity.WARNING : Severity.FINE), "Setting " + (i + 1) + ": tie at " + unit.text(s.tie(), 1), "card",
                    () -> card.accept(number)));
            String turns = s.staples().size() == 1 ? Say.turns(s.fewestTurns()) + " left" : Say.tenth(s.fewestTurns()) + " to " + Say.turns(s.mostTurns()) + " left";
            all.add(Note.weak(s.staples().size() + (s.staples().size() == 1 ? " staple, " : " staples, ") + turns
                    + (Double.isNaN(s.giveOrTake()) ? "" : ", each give or take " + Say.tenth(s.giveOrTake()))
                    + (shown.mayNotFit(s) ? ". With it some may end outside the limits." : ".")));
        }
        if (plan.settings().size() > NAMED) {
            all.add(Note.weak("and " + (plan.settings().size() - NAMED) + " more; Write a Table writes them all"));
        }
    }

    private void aside(BatchPlan plan, List<Note> all, Lengths unit) {
        if (plan.aside().isEmpty()) {
            return;
        }
        all.add(Note.head("Set aside"));
        plan.aside().stream().limit(NAMED).forEach(a -> all.add(Note.text("Staple " + a.staple().label() + ": " + unit.told(a.told())).does("show", () -> find.accept(a))));
        if (plan.aside().size() > NAMED) {
            all.add(Note.weak("and " + (plan.aside().size() - NAMED) + " more, marked in the table"));
        }
    }

    private void doubts(List<Doubt> doubts, List<Note> all, Lengths unit) {
        if (doubts.isEmpty()) {
            return;
        }
        all.add(Note.head("Look again"));
        doubts.stream().limit(NAMED).forEach(d -> all.add(Note.text("Staple " + d.staple().label() + ": " + unit.told(d.told())).does("show", () -> look.accept(d))));
        if (doubts.size() > NAMED) {
            all.add(Note.weak("and " + (doubts.size() - NAMED) + " more, marked in the table"));
        }
    }

    /** {@return what it says} */
    NoteList notes() {
        return notes;
    }

    /** {@return the drawing} */
    DrawingCanvas chart() {
        return chart;
    }
}
