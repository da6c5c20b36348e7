package culm.workbench.internal.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.log.Tied;
import culm.bench.wrong.Cause;
import culm.bench.wrong.CauseChart;
import culm.bench.wrong.Explanation;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.workbench.internal.bench.page.DrawingCanvas;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.bench.page.NoteList;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.ScrollPage;

/** What went wrong with the chosen blank: the answer, the causes by rank, and for each the check to make next. */
final class WrongPage extends Composite {
    private final ScrollPage page;
    private final NoteList answer;
    private final DrawingCanvas chart;
    private final Units units;
    private final NoteList checks;

    WrongPage(Composite parent, Look look, Units units) {
        super(parent, SWT.NONE);
        this.units = units;
        setLayout(new FillLayout());
        look.dress(this, Role.PAPER, Role.INK);
        page = new ScrollPage(this, look);
        answer = new NoteList(page.content(), look);
        chart = new DrawingCanvas(page.content(), look);
        checks = new NoteList(page.content(), look);
    }

    /** Shows what went wrong, lengths in the unit that is chosen now. */
    void show(Optional<Tied> tied, LogShown shown) {
        Lengths unit = units.now().drawn();
        List<Note> said = new ArrayList<>();
        said.add(Note.head(tied.map(t -> "Blank " + t.number()).orElse("Choose a blank at the left.")));
        Optional<Explanation> explanation = shown.explanation();
        if (explanation.isPresent()) {
            List<String> sentences = explanation.get().told().stream().map(unit::told).toList();
            for (int i = 0; i < sentences.size(); i++) {
                said.add(i == 0 ? Note.strong(sentences.get(i)) : Note.text(sentences.get(i)));
            }
            shown.company().ifPresent(c -> said.add(Note.text(c.text())));
        } else if (tied.isPresent()) {
            said.add(Note.text(tied.get().from().design().isEmpty() ? "The design it was tied from is not noted; choose it on the page of the blank."
                    : "Its design cannot be read."));
        }
        shown.problems().forEach(p -> said.add(Note.weak(p)));
        answer.show(said);
        List<Cause> causes = explanation.map(Explanation::causes).orElse(List.of());
        chart.show((width, measure) -> causes.isEmpty() ? Optional.empty() : Optional.of(CauseChart.draw(explanation.get(), width, measure)));
        List<Note> next = new ArrayList<>();
        if (!causes.isEmpty()) {
            next.add(Note.head("The check to make next, for each; the least far off first"));
            causes.forEach(c -> {
                next.add(Note.text(unit.told(c.toldCheck())));
                next.add(Note.weak(unit.told(c.told())));
            });
        }
        checks.show(next);
        page.fit();
    }

    /** {@return what it says, line by line} */
    List<String> lines() {
        List<String> lines = new ArrayList<>(answer.notes().stream().map(Note::text).toList());
        lines.addAll(checks.notes().stream().map(Note::text).toList());
        return lines;
    }
}
