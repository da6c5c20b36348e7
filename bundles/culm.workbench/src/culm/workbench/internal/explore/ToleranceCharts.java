package culm.workbench.internal.explore;

import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;

import culm.bench.plots.TolerancePlots;
import culm.blank.Limits;
import culm.explore.Cause;
import culm.explore.RuleShare;
import culm.explore.ToleranceResult;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.IntervalChart;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;

/** The three charts of a tolerance run below each other: turns left, the share of each rule, what the failures have in common. */
final class ToleranceCharts extends Composite {
    private static final double ROW = 20;
    private static final int LEAST = 120;
    private static final int CAUSE = 22;
    private static final int MOST_CAUSES = 5;
    private final ChartCanvas turns;
    private final ChartCanvas shares;
    private final ChartCanvas causes;
    private final Look look;
    private Limits limits = Limits.STANDARD;
    private IntervalChart rules = new IntervalChart("", List.of());
    private int reasons;
    private final IntSupplier room;

    /** @param room the height that it fills where it needs less */
    ToleranceCharts(Composite parent, Workshop workshop, IntSupplier room) {
        super(parent, SWT.NONE);
        this.room = room;
        this.look = workshop.look();
        look.dress(this, Role.PAPER, Role.INK);
        turns = new ChartCanvas(this, workshop, "Turns left of many blanks");
        shares = new ChartCanvas(this, workshop, "Share that passes each rule");
        causes = new ChartCanvas(this, workshop, "Inputs behind failures");
        setLayout(new Below());
    }

    void limits(Limits now) {
        limits = now;
    }

    void show(ToleranceResult r) {
        boolean any = r.blanks() > 0;
        List<Cause> told = r.causes().stream().limit(MOST_CAUSES).toList();
        IntervalChart chart = TolerancePlots.shares(r);
        rules = chart;
        reasons = told.size();
        turns.show(Optional.of(r).filter(x -> any).map(x -> content((w, h, m) -> TolerancePlots.turns(x, limits, w, h, m).drawing(), histogram(x))));
        shares.show(Optional.of(r).filter(x -> any).map(x -> content((w, h, m) -> chart.draw(w, ROW, m), shares(x))));
        causes.show(Optional.of(r).filter(x -> !told.isEmpty()).map(x -> content((w, h, m) -> TolerancePlots.causes(x.causes(), MOST_CAUSES, w, m).drawing(), causes(x))));
        layout();
    }

    private interface Draw {
        Drawing into(double width, double height, TextMeasure measure);
    }

    private static ChartCanvas.Content content(Draw draw, Figure.Table table) {
        return new ChartCanvas.Content() {
            @Override
            public Drawing draw(double width, double height, TextMeasure measure, Lengths unit) {
                return draw.into(width, height, measure);
            }

            @Override
            public Figure.Table table() {
                return table;
            }
        };
    }

    private static Figure.Table histogram(ToleranceResult r) {
        var h = r.turns().histogram(0.1);
        return new Figure.Table(List.of("turns left from", "to", "blanks"), java.util.stream.IntStream.range(0, h.counts().length)
                .mapToObj(i -> new double[] {h.from() + i * h.width(), h.from() + (i + 1) * h.width(), h.counts()[i]}).toList());
    }

    private static Figure.Table shares(ToleranceResult r) {
        return new Figure.Table(List.of("rule", "pass", "of", "share", "low", "high"), java.util.stream.IntStream.range(0, r.rules().size()).mapToObj(i -> {
            RuleShare s = r.rules().get(i);
            return new double[] {i + 1, s.passed().hits(), s.passed().of(), s.passed().value(), s.passed().low(), s.passed().high()};
        }).toList());
    }

    private static Figure.Table causes(ToleranceResult r) {
        return new Figure.Table(List.of("input", "low third fails", "middle", "high"), java.util.stream.IntStream.range(0, r.causes().size())
                .mapToObj(i -> new double[] {i + 1, r.causes().get(i).low().value(), r.causes().get(i).middle().value(), r.causes().get(i).high().value()}).toList());
    }

    List<Figure> figures() {
        return List.of(turns, shares, causes);
    }

    /** Shares and causes take what they need, the histogram what is left. */
    private final class Below extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            int width = wHint == SWT.DEFAULT ? 400 : wHint;
            return new Point(width, hHint == SWT.DEFAULT ? Math.max(room.getAsInt(), LEAST + ofRules(width) + ofCauses()) : hHint);
        }

        private int ofRules(int width) {
            return (int) rules.height(width, ROW, look.measure());
        }

        private int ofCauses() {
            return reasons == 0 ? 0 : 46 + CAUSE * reasons;
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = getClientArea();
            int ofRules = ofRules(area.width);
            int ofCauses = ofCauses();
            int high = Math.max(LEAST, area.height - ofRules - ofCauses);
            turns.setBounds(area.x, area.y, area.width, high);
            shares.setBounds(area.x, area.y + high, area.width, ofRules);
            causes.setBounds(area.x, area.y + high + ofRules, area.width, Math.max(1, ofCauses));
        }
    }
}
