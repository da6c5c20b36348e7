package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.plots.ChoicePlot;
import culm.bench.plots.PlotWords;
import culm.blank.Inputs;
import culm.design.DesignedBlank;
import culm.explore.Axis;
import culm.explore.BestChoice;
import culm.explore.Chosen;
import culm.explore.Free;
import culm.explore.Study;
import culm.explore.Usual;
import culm.explore.Varied;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.TextMeasure;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.sharing.Attempt;

/** The best choice: which values of what is free make the most blanks work, what that gains, and how sure it is. */
public final class ChoicePage extends Composite {
    private static final long SEED = 1;
    private final Workshop workshop;
    private final DesignSession session;
    private final Consumer<FileProblemException> refused;
    private final AxisList list;
    private final RunBar bar;
    private final Label sentence;
    private final Label sure;
    private final ChartCanvas chart;
    private final PickActions actions;
    private Optional<Found> found = Optional.empty();

    /** What was found, of what. */
    private record Found(Study study, List<Axis> axes, Map<String, List<Link>> links, Chosen chosen) {
        String words(Lengths lengths) {
            List<String> all = new ArrayList<>();
            for (int i = 0; i < axes.size(); i++) {
                all.add(axes.get(i) instanceof Axis.Parts p ? p.label() + " \"" + chosen.texts().get(i) + "\""
                        : PlotWords.value(study.base(), axes.get(i), chosen.values().get(i), lengths));
            }
            return String.join(", ", all);
        }

        Picked picked() {
            Map<String, Link> parts = new TreeMap<>();
            Map<String, Double> numbers = new TreeMap<>();
            for (int i = 0; i < axes.size(); i++) {
                String id = axes.get(i).id();
                if (axes.get(i) instanceof Axis.Parts) {
                    parts.put(id, links.get(id).get(chosen.values().get(i).intValue()));
                } else {
                    numbers.put(id, chosen.values().get(i));
                }
            }
            return new Picked(parts, numbers, words(Lengths.MM), study.base());
        }
    }

    ChoicePage(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.refused = refused;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 12;
        layout.marginHeight = 4;
        layout.verticalSpacing = 6;
        setLayout(layout);
        label("Free to choose, with the steps that are to be had:", Size.BODY, Role.QUIET);
        list = new AxisList(this, workshop, new StudioParts(workshop, session), () -> layout(true, true));
        list.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        bar = new RunBar(this, workshop.look());
        bar.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        bar.onRun(this::run);
        sentence = label("Searches for the values that make the most blanks pass every rule, all inputs within their own give or take.", Size.HEADING, Role.INK);
        sure = label("", Size.BODY, Role.QUIET);
        chart = new ChartCanvas(this, workshop, "Best choice");
        chart.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        actions = new PickActions(this, workshop, session, () -> found.map(Found::picked), () -> bar.say("Nothing was found yet.", true), refused);
        actions.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        actions.setVisible(false);
        workshop.units().onChange(this, () -> found.ifPresent(this::take));
    }

    private Label label(String words, Size size, Role role) {
        Label label = new Label(this, SWT.WRAP);
        label.setText(words);
        label.setFont(workshop.look().font(size, size == Size.HEADING ? SWT.BOLD : SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, role);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        wide.widthHint = 100;
        label.setLayoutData(wide);
        return label;
    }

    /** Shows the design as it is now. */
    void show() {
        session.blank().ifPresent(b -> {
            list.offer(b.blank());
            if (list.rows().isEmpty()) {
                list.add(Inputs.TIE_LENGTH);
            }
            bar.compare(found.map(f -> f.study().base()), b.blank());
        });
    }

    /** Searches. */
    public void run() {
        bar.ask(session.blank(), now -> Attempt.at(() -> search(now), refused));
    }

    private void search(DesignedBlank now) throws FileProblemException {
        List<Axis> axes = list.axes();
        List<Free> free = axes.stream().map(Free::among).toList();
        Map<String, List<Link>> links = list.links();
        List<Varied> varied = Usual.of(now.blank());
        Study study = new Study(now.blank(), varied, now.limits(), workshop.rules());
        bar.<Found>run("tried", watcher -> new Found(study, axes, links, BestChoice.search(study, free, SEED, RunJob.threads(), new Counting(watcher))),
                (result, ended) -> take(result), result -> said(result.chosen()));
    }

    private static String said(Chosen c) {
        return c.partial() ? String.format(Locale.ROOT, "Stopped after %,d; the best of these.", c.tried())
                : c.every() ? String.format(Locale.ROOT, "All %,d combinations were tried.", c.tried()) : String.format(Locale.ROOT, "The best of %,d that were tried.", c.tried());
    }

    private void take(Found now) {
        found = Optional.of(now);
        Chosen c = now.chosen();
        String first = now.words(workshop.units().now().drawn());
        String share = PlotWords.percent(c.best().passed().value()) + " of the blanks pass";
        sentence.setText(!c.certain() ? "Nothing among these is surely better than the design as it is: " + PlotWords.percent(c.baseline().passed().value()) + " of the blanks pass."
                : upper(first) + ": " + share + " instead of " + PlotWords.percent(c.baseline().passed().value()) + ".");
        boolean none = ChoicePlot.nothing(c);
        sure.setText(none ? String.format(Locale.ROOT, "None passes more often than the design as it is, told from %,d blanks that the search has not seen.", c.best().blanks()) : String.format(Locale.ROOT, "%s%s more in a hundred pass (95 %% interval %s to %s), told from %,d blanks that the search has not seen; %s", c.certain() ? "" : upper(first) + ": ",
                points(c.gain()), points(c.gainLow()), points(c.gainHigh()), c.best().blanks(),
                c.every() ? "nothing else among these combinations is better but by chance." : "something a little better may exist."));
        chart.show(Optional.of(new Content(c)));
        actions.setVisible(!none);
        layout();
    }

    private static String upper(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String points(double share) {
        return String.format(Locale.ROOT, "%.1f", 100 * share + 0.0).replace('-', '−').replace("−0.0", "0.0");
    }

    private record Content(Chosen chosen) implements ChartCanvas.Content {
        @Override
        public Drawing draw(double width, double height, TextMeasure measure, Lengths unit) {
            return ChoicePlot.draw(chosen, width, measure);
        }

        @Override
        public Figure.Table table() {
            return new Figure.Table(List.of("pass now", "pass then", "gain", "low", "high"),
                    List.of(new double[] {chosen.baseline().passed().value(), chosen.best().passed().value(), chosen.gain(), chosen.gainLow(), chosen.gainHigh()}));
        }
    }

    /** {@return what varies} */
    public AxisList list() {
        return list;
    }

    /** {@return the run} */
    public RunBar bar() {
        return bar;
    }

    /** {@return what was found last} */
    public Optional<Chosen> chosen() {
        return found.map(Found::chosen);
    }

    /** {@return what can be done with what was found} */
    public PickActions actions() {
        return actions;
    }

    /** {@return what is said} */
    public String sentence() {
        return sentence.getText();
    }

    List<Figure> figures() {
        return List.of(chart);
    }
}
