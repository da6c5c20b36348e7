package culm.workbench.internal.explore;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import culm.bench.plots.PlotWords;
import culm.blank.Blank;
import culm.blank.rules.Say;
import culm.explore.Distribution;
import culm.explore.Study;
import culm.explore.ToleranceResult;
import culm.explore.ToleranceRun;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.ScrollPage;

/** How many of many blanks will work, each drawn within the give or take of its inputs. */
public final class TolerancesPage extends Composite {
    private static final int SIDE = 326;
    private static final long MOST = 100_000_000;
    private final Workshop workshop;
    private final DesignSession session;
    private final SpreadList spreads;
    private final Combo blanks;
    private final Text seed;
    private final RunBar bar;
    private final Label sentence;
    private final Label turns;
    private final ScrollPage scroll;
    private final ToleranceCharts charts;
    private Optional<ToleranceResult> result = Optional.empty();
    private Blank ranOn;
    private String ranFor = "";

    TolerancesPage(Composite parent, Workshop workshop, DesignSession session) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 4;
        layout.horizontalSpacing = 14;
        setLayout(layout);
        Composite left = column(3);
        GridData narrow = new GridData(SWT.FILL, SWT.FILL, false, true);
        narrow.widthHint = SIDE;
        left.setLayoutData(narrow);
        label(left, "each input varies");
        LinkText reset = new LinkText(left, workshop.look(), "as is usual", Size.BODY);
        reset.setToolTipText("Every input within its own give or take, any value as likely as any other");
        reset.setLayoutData(new GridData(SWT.END, SWT.CENTER, true, false, 2, 1));
        spreads = new SpreadList(left, workshop);
        spreads.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        reset.onClick(spreads::reset);
        label(left, "blanks");
        blanks = new Combo(left, SWT.NONE);
        blanks.setItems("10,000", "100,000", "1,000,000", "10,000,000");
        blanks.select(1);
        blanks.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        blanks.setData("culm.explore", "blanks");
        blanks.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
        label(left, "seed").setToolTipText("The same seed draws the same blanks");
        seed = new Text(left, SWT.BORDER | SWT.RIGHT);
        seed.setText("1");
        seed.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        seed.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
        spreads.onChange(this::compare);
        blanks.addListener(SWT.Modify, e -> compare());
        seed.addListener(SWT.Modify, e -> compare());
        Composite right = column(1);
        right.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        bar = new RunBar(right, workshop.look());
        bar.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        bar.onRun(this::run);
        sentence = wrapped(right, Size.HEADING, SWT.BOLD);
        sentence.setText("Draws many blanks within what each input may be, and judges every one.");
        turns = wrapped(right, Size.BODY, SWT.NORMAL);
        workshop.look().onChange(turns, this::ink);
        scroll = new ScrollPage(right, workshop.look());
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        charts = new ToleranceCharts(scroll.content(), workshop, () -> scroll.getClientArea().height);
    }

    private Composite column(int columns) {
        Composite column = new Composite(this, SWT.NONE);
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 4;
        column.setLayout(layout);
        workshop.look().dress(column, Role.PAPER, Role.INK);
        return column;
    }

    private Label wrapped(Composite parent, Size size, int style) {
        Label label = new Label(parent, SWT.WRAP);
        label.setFont(workshop.look().font(size, style));
        workshop.look().dress(label, Role.PAPER, Role.INK);
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        data.widthHint = 100;
        label.setLayoutData(data);
        return label;
    }

    private Label label(Composite parent, String words) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, Role.QUIET);
        return label;
    }

    /** Shows the design as it is now. */
    void show() {
        session.blank().ifPresent(b -> {
            spreads.offer(b.blank());
            if (ranOn == null && !bar.running()) {
                run(); // something to look at, without a click
            }
            compare();
        });
    }

    private String asked() {
        return spreads.told() + "\n" + blanks.getText() + "\n" + seed.getText();
    }

    /** What was found is of the design and the spreads for which it ran: it is told when they are others now. */
    private void compare() {
        if (result.isEmpty() || bar.running()) {
            return;
        }
        if (!asked().equals(ranFor)) {
            bar.outdated();
        } else if (session.blank().isEmpty() || !bar.compare(Optional.of(ranOn), session.blank().get().blank())) {
            bar.say(ended(result.get()), false);
        }
        ink();
    }

    private void ink() {
        for (Label each : new Label[] { sentence, turns }) {
            each.setForeground(workshop.look().colour(asked().equals(ranFor) ? Role.INK : Role.QUIET));
        }
    }

    /** Runs. */
    public void run() {
        bar.ask(session.blank(), now -> {
            Study study = new Study(now.blank(), spreads.varied(), now.limits(), workshop.rules());
            long wanted = Whole.read("Blanks", blanks.getText(), 1, MOST);
            long first = Whole.read("The seed", seed.getText(), 0, Long.MAX_VALUE / 10);
            ranOn = study.base();
            ranFor = asked();
            charts.limits(study.limits());
            bar.<ToleranceResult>run("blanks", watcher -> ToleranceRun.run(study, wanted, first, RunJob.threads(), watcher), this::take, TolerancesPage::ended);
        });
    }

    private void take(ToleranceResult now, boolean ended) {
        result = Optional.of(now);
        if (ended) {
            compare(); // something else may have been typed meanwhile
        } else {
            ink();
        }
        sentence.setText(now.blanks() == 0 ? "Stopped before any blank was judged."
                : PlotWords.percent(now.passed().value()) + " of the blanks pass (" + PlotWords.interval(now.passed()) + ").");
        turns.setText(now.blanks() == 0 ? "" : turns(now));
        charts.show(now);
        turns.getParent().layout();
        scroll.fit();
    }

    private static String turns(ToleranceResult r) {
        Distribution d = r.turns();
        String never = r.never() == 0 ? "" : String.format(Locale.ROOT, "; %s never close", PlotWords.percent((double) r.never() / r.blanks()));
        return "Turns left: in the middle " + turn(d, 50) + ", half of them " + turn(d, 25) + " to " + turn(d, 75) + ", nine of ten " + turn(d, 5) + " to " + turn(d, 95) + never + ".";
    }

    private static String turn(Distribution d, double percent) {
        double value = d.percentile(percent);
        return Double.isNaN(value) ? "never" : Say.tenth(value).replace('-', '−');
    }

    private static String ended(ToleranceResult r) {
        return (r.partial() ? String.format(Locale.ROOT, "Stopped after %,d of %,d blanks", r.blanks(), r.wanted()) : String.format(Locale.ROOT, "%,d blanks", r.blanks()))
                + ", seed " + r.seed() + (r.refused() == 0 ? "." : String.format(Locale.ROOT, "; %,d cannot be computed.", r.refused()));
    }

    /** {@return how every input scatters} */
    public SpreadList spreads() {
        return spreads;
    }

    /** Draws so many blanks the next time. */
    public void blanks(String count) {
        blanks.setText(count);
    }

    /** {@return the run} */
    public RunBar bar() {
        return bar;
    }

    /** {@return what was found last} */
    public Optional<ToleranceResult> result() {
        return result;
    }

    /** {@return what is said} */
    public String sentence() {
        return sentence.getText();
    }

    List<Figure> figures() {
        return charts.figures();
    }
}
