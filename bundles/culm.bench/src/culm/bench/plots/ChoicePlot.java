package culm.bench.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import culm.explore.Chosen;
import culm.explore.RuleShare;
import culm.explore.Share;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.IntervalChart;

/** The best choice beside the design as it is: shares with their intervals, all rules and each that some blanks fail. */
public final class ChoicePlot {
    private static final double ROW = 22;

    private ChoicePlot() {
    }

    /** Whether nothing is gained, as it is shown in percent with one decimal. */
    public static boolean nothing(Chosen c) {
        return DoubleStream.of(c.gain(), c.gainLow(), c.gainHigh()).allMatch(gain -> Math.rint(1000 * gain) == 0);
    }

    /** Draws it: as it is, and beside that what was chosen if anything is gained. @param width at least 320, drawing units */
    public static Drawing draw(Chosen c, double width, TextMeasure measure) {
        List<IntervalChart.Row> rows = new ArrayList<>();
        if (nothing(c)) {
            rows.add(row("all rules", "", c.baseline().passed(), Role.QUIET));
            c.baseline().rules().stream().filter(ChoicePlot::failed).forEach(r -> rows.add(row(r.name(), "", r.passed(), Role.QUIET)));
            return new IntervalChart("Pass, as it is", rows).draw(width, ROW, measure);
        }
        pair(rows, "all rules", c.baseline().passed(), c.best().passed());
        Map<String, RuleShare> then = c.best().rules().stream().collect(Collectors.toMap(RuleShare::id, r -> r));
        for (RuleShare now : c.baseline().rules()) {
            RuleShare after = then.get(now.id());
            if (failed(now) || failed(after)) {
                pair(rows, now.name(), now.passed(), after.passed());
            }
        }
        return new IntervalChart("Pass: as it is, and with the best choice", rows).draw(width, ROW, measure);
    }

    private static boolean failed(RuleShare rule) {
        return rule.passed().hits() < rule.passed().of();
    }

    private static void pair(List<IntervalChart.Row> rows, String name, Share now, Share then) {
        rows.add(row(name, "now ", now, Role.QUIET));
        rows.add(row("", "then ", then, Role.FITS));
    }

    private static IntervalChart.Row row(String name, String when, Share s, Role role) {
        return new IntervalChart.Row(name, s.value(), s.low(), s.high(), when + PlotWords.share(s), role);
    }
}
