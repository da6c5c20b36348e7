package culm.bench.plots;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Limits;
import culm.explore.Cause;
import culm.explore.RuleShare;
import culm.explore.Share;
import culm.explore.ToleranceResult;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.BarChart;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.Histogram;
import culm.figures.chart.IntervalChart;
import culm.figures.chart.Span;

/** A tolerance run as drawings. */
public final class TolerancePlots {
    private static final int SAMPLES = 2000;
    private static final int BARS = 16;

    private TolerancePlots() {
    }

    /** Turns left as a histogram: the allowed stretch shaded, dashed where 5, 50 and 95 of a hundred lie below; nine of ten lie between the outer two. */
    public static ChartDrawing turns(ToleranceResult r, Limits limits, double width, double height, TextMeasure measure) {
        double[] turns = r.turns().samples(SAMPLES);
        Span allowed = new Span(limits.get(Limits.TURNS_FEWEST), limits.get(Limits.TURNS_MOST), "allowed", Role.FITS);
        List<Histogram.Mark> marks = List.of(new Histogram.Mark(r.turns().percentile(5), "5 % below"), new Histogram.Mark(r.turns().percentile(50), "middle"),
                new Histogram.Mark(r.turns().percentile(95), "5 % above"));
        return new Histogram("Turns left", new AxisLabel("turns left", ""), turns, marks, allowed, "never close").draw(width, height, measure);
    }

    /** The share that passes each rule with its interval: all rules first, then those that some fail, the worst first; those that all pass are left out. */
    public static IntervalChart shares(ToleranceResult r) {
        List<IntervalChart.Row> rows = new ArrayList<>();
        rows.add(row("all rules", r.passed()));
        List<RuleShare> failed = new ArrayList<>(r.rules().stream().filter(s -> s.passed().hits() < s.passed().of()).toList());
        failed.sort(java.util.Comparator.comparingDouble(s -> s.passed().value()));
        failed.forEach(s -> rows.add(row(s.name(), s.passed())));
        return new IntervalChart("Pass, with the 95 % interval", rows);
    }

    private static IntervalChart.Row row(String name, Share s) {
        return new IntervalChart.Row(name, s.value(), s.low(), s.high(), PlotWords.share(s), Role.THREAD);
    }

    /** Inputs behind failures of any rule; what may be chance is quiet. @param most at most so many */
    public static ChartDrawing causes(List<Cause> causes, int most, double width, TextMeasure measure) {
        List<BarChart.Bar> bars = causes.stream().limit(Math.min(most, BARS))
                .map(c -> new BarChart.Bar(c.label() + ", " + c.where(), 100 * c.weight(), c.certain() ? Role.DOES_NOT : Role.QUIET)).toList();
        return new BarChart("Behind failures: worst third less best third", "%", 1, bars).draw(width, measure);
    }

    /** All three below each other, as one sheet. */
    public static Drawing all(ToleranceResult r, Limits limits, double width, double height, TextMeasure measure) {
        return Sheets.below("How many will work", List.of(turns(r, limits, width, height, measure).drawing(), shares(r).draw(width, 24, measure),
                causes(r.causes(), BARS, width, measure).drawing()));
    }
}
