package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.bench.plots.MapPlot;
import culm.bench.plots.PlotWords;
import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.TwoWayMap;
import culm.explore.Varied;
import culm.explore.Watcher;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.TextMeasure;
import culm.figures.Ticks;
import culm.figures.chart.ChartDrawing;
import culm.workbench.internal.graphs.Figure;

/**
 * A map of two numbers of a design, between the ends of what is asked.
 *
 * @param base the design's blank
 * @param judging how a place of it is judged as a design
 * @param map the map
 * @param lines of what its lines are
 */
record MapMade(Blank base, Judging judging, TwoWayMap map, MapPlot.Lines lines) implements ChartCanvas.Content {
    private static final int ACROSS = 141;
    private static final int UP = 101;

    static MapMade make(Study study, Judging judging, Axis.Numbers x, Axis.Numbers y, MapPlot.Lines lines, Watcher<MapMade> watcher) {
        TwoWayMap map = TwoWayMap.of(study, spread(x, ACROSS), spread(y, UP), RunJob.threads(), new Counting(watcher));
        return new MapMade(study.base(), judging, map, lines);
    }

    /** @param count of values, at most */
    private static Axis.Numbers spread(Axis.Numbers axis, int count) {
        double low = java.util.Arrays.stream(axis.values()).min().orElseThrow();
        double high = java.util.Arrays.stream(axis.values()).max().orElseThrow();
        if (low == high) {
            throw new IllegalArgumentException(axis.label() + " has one value only; a map needs two ends.");
        }
        // Round steps: a crossing that is clicked is told, and used, as it can be set at the bench.
        return Axis.Numbers.stepped(axis.id(), axis.label(), low, high, Ticks.niceStep((high - low) / (count - 1) * 0.999));
    }

    /** Whether it was stopped before its end: then it has no regions. */
    boolean partial() {
        return map.regions().isEmpty();
    }

    MapMade with(MapPlot.Lines other) {
        return new MapMade(base, judging, map, other);
    }

    @Override
    public Drawing draw(double width, double height, TextMeasure measure, Lengths unit) {
        return MapPlot.draw(base, map, lines, width, height, measure, unit).drawing();
    }

    @Override
    public Optional<ChartDrawing> chart(double width, double height, TextMeasure measure, Lengths unit) {
        return Optional.of(MapPlot.draw(base, map, lines, width, height, measure, unit));
    }

    @Override
    public Figure.Table table() {
        List<double[]> rows = new ArrayList<>();
        for (int r = 0; r < map.y().size(); r++) {
            for (int c = 0; c < map.x().size(); c++) {
                rows.add(new double[] {map.x().values()[c], map.y().values()[r], map.turns()[r][c], map.closes()[r][c], Integer.bitCount(map.failed()[r][c])});
            }
        }
        return new Figure.Table(List.of(map.x().label(), map.y().label(), "turns left", "sides close at mm", "rules that fail"), rows);
    }

    /** The column and row of the crossing nearest to two values as the drawing's axes count. @param unit in what it is drawn */
    int[] nearest(double x, double y, Lengths unit) {
        return new int[] {nearest(map.x().values(), stored(map.x(), x, unit)), nearest(map.y().values(), stored(map.y(), y, unit))};
    }

    private double stored(Axis axis, double shown, Lengths unit) {
        return PlotWords.lengths(base, axis) ? unit.toMm(shown) : shown;
    }

    /** A crossing in words. */
    String words(int[] at, Lengths lengths) {
        return PlotWords.value(base, map.x(), map.x().values()[at[0]], lengths) + ", " + PlotWords.value(base, map.y(), map.y().values()[at[1]], lengths);
    }

    private static int nearest(double[] values, double value) {
        int best = 0;
        for (int i = 1; i < values.length; i++) {
            best = Math.abs(values[i] - value) < Math.abs(values[best] - value) ? i : best;
        }
        return best;
    }

    /** The verdict that a crossing would have as a design. */
    Judging.Judged judged(int[] at) {
        Blank there = Varied.with(Varied.with(base, map.x().id(), map.x().values()[at[0]]), map.y().id(), map.y().values()[at[1]]);
        return judging.of(there, failed(at[0], at[1]));
    }

    /** What fails at a crossing. */
    private List<String> failed(int column, int row) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < map.rules().size(); i++) {
            if ((map.failed()[row][column] & 1 << i) != 0) {
                all.add(map.rules().get(i));
            }
        }
        return all;
    }
}
