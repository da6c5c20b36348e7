package culm.workbench.internal.explore;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.plots.MattersPlots;
import culm.bench.plots.PlotWords;
import culm.blank.Assessment;
import culm.explore.Effect;
import culm.explore.Sensitivities;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.TextMeasure;
import culm.model.text.Numbers;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.graphs.Figure;

/** Which reading moves turns left how far, and what to measure better; always of the design as it is now. */
public final class MattersPage extends Composite {
    private final Label sentence;
    private final ChartCanvas chart;
    private Optional<Assessment> shown = Optional.empty();

    MattersPage(Composite parent, Workshop workshop) {
        super(parent, SWT.NONE);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 12;
        layout.marginHeight = 4;
        setLayout(layout);
        sentence = new Label(this, SWT.WRAP);
        sentence.setFont(workshop.look().font(Size.HEADING, SWT.BOLD));
        sentence.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        workshop.look().dress(sentence, Role.PAPER, Role.INK);
        Label help = new Label(this, SWT.WRAP);
        Runnable explain = () -> help.setText("Brass was measured, blue is assumed. Both charts are in the same order; the left one says what counts for this design, the right one what "
                + MattersPlots.step(workshop.units().now().drawn()) + " does.");
        explain.run();
        workshop.units().onChange(this, explain);
        help.setFont(workshop.look().font(Size.SMALL, SWT.NORMAL));
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        wide.widthHint = 100;
        help.setLayoutData(wide);
        workshop.look().dress(help, Role.PAPER, Role.QUIET);
        chart = new ChartCanvas(this, workshop, "What matters");
        chart.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    }

    /** Shows an assessed design. */
    void show(Optional<Assessment> now) {
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Optional<Sensitivities> found = now.map(Sensitivities::of);
        sentence.setText(found.map(MattersPage::said).orElse("The design cannot be told; its findings say why."));
        chart.show(found.filter(s -> !s.effects().isEmpty()).map(Content::new));
        layout();
    }

    private static String said(Sensitivities s) {
        if (s.advice().isEmpty()) {
            return s.why().isEmpty() ? "Nothing moves the closing." : s.why();
        }
        Effect e = s.advice().get();
        String turns = Numbers.fixed(Math.abs(e.perTolerance()), 1);
        return "Measure better first: " + e.label() + ". " + (e.measured() ? "Its give or take" : "It was assumed; its give or take") + " moves the closing by "
                + turns + (turns.equals("1.0") ? " turn" : " turns") + ", " + PlotWords.percent(e.share()) + " of the whole spread.";
    }

    /** {@return what is said} */
    public String sentence() {
        return sentence.getText();
    }

    List<Figure> figures() {
        return List.of(chart);
    }

    private record Content(Sensitivities found) implements ChartCanvas.Content {
        @Override
        public Drawing draw(double width, double height, TextMeasure measure, Lengths unit) {
            return MattersPlots.both(found, width, measure, unit);
        }

        @Override
        public Figure.Table table() {
            List<Effect> all = MattersPlots.drawn(found);
            return new Figure.Table(List.of("rank", "turns for 0.01 more", "give or take", "turns for its give or take", "share of the variance"),
                    java.util.stream.IntStream.range(0, all.size()).mapToObj(i -> new double[] {i + 1, all.get(i).perHundredth(), all.get(i).plusMinus(),
                            all.get(i).perTolerance(), all.get(i).share()}).toList());
        }
    }
}
