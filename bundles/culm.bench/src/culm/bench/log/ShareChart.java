package culm.bench.log;

import java.util.List;
import java.util.function.Function;

import culm.explore.Share;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.IntervalChart;

/** A share for each group with its 95 % interval: a dot, a line, and the counts in words. */
public final class ShareChart {
    private static final double ROW = 26;

    private ShareChart() {
    }

    /**
     * Draws it.
     * @param caption what share it is
     * @param groups  one row each
     * @param share   which share
     * @param width   drawing units, at least 320
     */
    public static Drawing draw(String caption, List<GroupStats> groups, Function<GroupStats, Share> share, double width, TextMeasure measure) {
        List<IntervalChart.Row> rows = groups.stream().map(g -> {
            Share s = share.apply(g);
            return new IntervalChart.Row(name(g), s.value(), s.low(), s.high(), Shares.text(s), Role.THREAD);
        }).toList();
        return new IntervalChart(caption + ", with its 95 % interval", rows).draw(width, ROW, measure);
    }

    private static String name(GroupStats group) {
        return group.group().isEmpty() ? "not noted" : group.group();
    }
}
