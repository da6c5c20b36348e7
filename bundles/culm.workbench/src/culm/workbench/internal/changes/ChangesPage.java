package culm.workbench.internal.changes;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.rules.Finding;
import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.graphs.OverlayCanvas;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.ScrollPage;
import culm.workbench.internal.widgets.SignLine;

/** What changes if: the difference to the blank that worked first, then number by number; changes are tried here before they are made. */
public final class ChangesPage extends Composite {
    private static final int MOST_TOLD = 3;
    private final Workshop workshop;
    private final DesignSession session;
    private final Trial trial;
    private final Label sentence;
    private final SignLine verdict;
    private final Label against;
    private final TrialControls controls;
    private final ScrollPage scroll;
    private final ComparisonCanvas canvas;
    private final OverlayCanvas overlay;
    private final LinkText use;
    private final LinkText clear;
    private final culm.workbench.internal.editor.Recompute<Comparison> recompute;
    private Comparison shown = Comparison.NONE;

    /**
     * The page of a design.
     *
     * @param parent where it goes
     * @param workshop what the window works with
     * @param session the design
     * @param refused told why something cannot be done
     */
    public ChangesPage(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.trial = new Trial(workshop, session);
        this.recompute = new culm.workbench.internal.editor.Recompute<>(workshop.worker(), workshop.look()::later, this::publish);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.verticalSpacing = 8;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        sentence = new Label(this, SWT.WRAP);
        sentence.setFont(workshop.look().font(Size.HEADING, SWT.BOLD));
        workshop.look().dress(sentence, Role.PAPER, Role.INK);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        sentence.setLayoutData(wide);
        verdict = new SignLine(this, workshop.look());
        verdict.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        against = new Label(this, SWT.WRAP);
        against.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(against, Role.PAPER, Role.QUIET);
        GridData below = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        below.horizontalIndent = 22; // as the verdict's words
        below.widthHint = 200;
        against.setLayoutData(below);
        controls = new TrialControls(this, workshop, session, trial, this::show);
        controls.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        use = new LinkText(this, workshop.look(), "use what was tried", Size.BODY);
        use.onClick(() -> Attempt.at(() -> {
            trial.use();
            controls.reset();
        }, refused));
        use.setVisible(false);
        clear = new LinkText(this, workshop.look(), "try nothing", Size.BODY);
        clear.onClick(() -> {
            trial.clear();
            controls.reset();
            show();
        });
        clear.setVisible(false);
        scroll = new ScrollPage(this, workshop.look());
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        canvas = new ComparisonCanvas(scroll.content(), workshop.look());
        overlay = new OverlayCanvas(scroll.content(), workshop.look(), workshop.units());
        workshop.units().onChange(this, this::show);
    }

    /** Shows the design as it is now. */
    public void show() {
        Optional<DesignedBlank> now = session.blank();
        if (now.isEmpty() || isDisposed()) {
            return;
        }
        Optional<DesignedBlank> tried = Optional.empty();
        try {
            tried = trial.blank();
        } catch (FileProblemException e) {
            sentence.setText(e.problem().message());
            return;
        }
        Optional<DesignedBlank> other = tried;
        var unit = workshop.units().now();
        recompute.ask(() -> compare(now.get(), other, unit));
        controls.show();
    }

    private Comparison compare(DesignedBlank now, Optional<DesignedBlank> tried, culm.workbench.internal.numbers.LengthUnit unit) {
        Optional<Fit> fit = now.blank().fit();
        String name = fit.isPresent() ? "the blank that worked" : "as saved";
        Blank base = fit.map(f -> f.worked().edit().fit(f).build()).orElseGet(() -> saved(now));
        Assessment a = Assessor.assess(base);
        return Comparison.of(name, a, now.assess(), tried.map(DesignedBlank::assess), each -> judge(now, each), now.limits(), unit);
    }

    /** As the design itself is judged. */
    private List<Finding> judge(DesignedBlank now, Assessment each) {
        DesignedBlank as = new DesignedBlank(now.name(), each.blank(), now.limits(), now.places(), now.remarks());
        return as.judge(each, workshop.rules(), workshop.extensions().findings());
    }

    /** The design as it stands on disk; as it is now when that cannot be read. */
    private Blank saved(DesignedBlank now) {
        try {
            return workshop.bridge().read(session.file()).blank();
        } catch (FileProblemException e) {
            return now.blank();
        }
    }

    private void publish(Comparison now) {
        if (isDisposed()) {
            return;
        }
        shown = now;
        sentence.setText(now.sentence());
        verdict.show(now.verdict());
        against.setText(now.against().stream().limit(MOST_TOLD).collect(Collectors.joining("\n")));
        there(verdict, now.tried());
        there(against, !now.against().isEmpty());
        use.setVisible(now.tried());
        clear.setVisible(now.tried());
        canvas.show(now);
        overlay.show(now.two());
        layout();
        scroll.fit();
    }

    private static void there(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }

    /** {@return its drawings, of what differs} */
    public List<Figure> figures() {
        return shown.two().isPresent() ? List.of(overlay) : List.of();
    }

    /** {@return what is said now} */
    public String sentence() {
        return shown.sentence();
    }

    /** {@return how what was tried stands; its sentence is empty when nothing is tried} */
    public Verdict verdict() {
        return shown.verdict();
    }

    /** {@return what stands against what was tried, worst first} */
    public List<String> against() {
        return shown.against();
    }

    /** {@return whether what is shown will still change} */
    public boolean pending() {
        return recompute.pending();
    }
}
