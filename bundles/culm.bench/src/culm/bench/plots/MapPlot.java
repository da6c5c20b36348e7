package culm.bench.plots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.TwoWayMap;
import culm.figures.Dash;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.Ticks;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.RegionMap;

/** A map of two inputs: regions with the rules that fail, and lines of turns left or of the closing. */
public final class MapPlot {
    private static final int LEAST_LABELLED = 400;
    private static final int LEVELS = 5;
    private static final Role[] ROLES = {Role.THREAD, Role.INK, Role.BRASS_EDGE, Role.BARK, Role.QUIET};

    /** Of what the lines are. */
    public enum Lines {
        /** 0, 1 and 2 turns left. */
        TURNS("turns left"),
        /** Heights at which the sides close. */
        CLOSES("sides close at");

        private final String words;

        Lines(String words) {
            this.words = words;
        }

        /** In the words of the bench. */
        public String words() {
            return words;
        }
    }

    private MapPlot() {
    }

    /** Draws it with lengths in mm. @param base the blank that was varied */
    public static ChartDrawing draw(Blank base, TwoWayMap m, Lines lines, double width, double height, TextMeasure measure) {
        return draw(base, m, lines, width, height, measure, Lengths.MM);
    }

    /** Draws it. @param base the blank that was varied; @param unit in what it is written; axes of lengths in what is returned are in it */
    public static ChartDrawing draw(Blank base, TwoWayMap m, Lines lines, double width, double height, TextMeasure measure, Lengths unit) {
        boolean turns = lines == Lines.TURNS;
        return new RegionMap("Where every rule is passed, give or take aside", PlotWords.label(base, m.x(), unit), PlotWords.label(base, m.y(), unit), values(base, m.x(), unit), values(base, m.y(), unit),
                m.failed(), turns ? m.turns() : Arrays.stream(m.closes()).map(row -> in(unit, row)).toArray(double[][]::new), turns ? turns() : heights(m, unit), names(m))
                .draw(width, height, measure);
    }

    private static double[] values(Blank base, Axis.Numbers axis, Lengths unit) {
        return PlotWords.lengths(base, axis) ? in(unit, axis.values()) : axis.values();
    }

    private static double[] in(Lengths unit, double[] mm) {
        return Arrays.stream(mm).map(unit::of).toArray();
    }

    private static List<RegionMap.Level> turns() {
        return List.of(new RegionMap.Level(0, "0 turns", Role.THREAD, Dash.SOLID), new RegionMap.Level(1, "1 turn", Role.INK, Dash.SOLID),
                new RegionMap.Level(2, "2 turns", Role.BRASS_EDGE, Dash.SOLID));
    }

    private static List<RegionMap.Level> heights(TwoWayMap m, Lengths unit) {
        double[] found = Arrays.stream(m.closes()).flatMapToDouble(DoubleStream::of).filter(Double::isFinite).map(unit::of).sorted().toArray();
        if (found.length == 0 || found[0] == found[found.length - 1]) {
            return List.of();
        }
        List<RegionMap.Level> levels = new ArrayList<>();
        Ticks ticks = Ticks.within(found[0], found[found.length - 1], LEVELS);
        for (double v : ticks.values()) {
            levels.add(new RegionMap.Level(v, String.format(Locale.ROOT, "%." + ticks.digits() + "f %s", v, unit.sign()), ROLES[levels.size() % ROLES.length],
                    levels.size() < ROLES.length ? Dash.SOLID : Dash.DASHED));
        }
        return levels;
    }

    private static List<RegionMap.Name> names(TwoWayMap m) {
        long all = (long) m.x().size() * m.y().size();
        return m.regions().stream().filter(r -> (long) r.cells() * LEAST_LABELLED >= all)
                .map(r -> new RegionMap.Name(words(r), r.labelX(), r.labelY(), r.failed().isEmpty())).toList();
    }

    private static String words(TwoWayMap.Region r) {
        return r.failed().isEmpty() ? "passes every rule" : "not passed: " + PlotWords.rules(r.failed());
    }

    /** What is said of the region that passes every rule: by which rules it is bounded. */
    public static String bounds(TwoWayMap m) {
        return m.regions().stream().filter(r -> r.failed().isEmpty()).findFirst()
                .map(r -> r.bounds().isEmpty() ? "Every rule is passed everywhere here." : "Where every rule is passed is bounded by: " + PlotWords.rules(r.bounds()) + ".").orElse("Nothing here passes every rule.");
    }
}
