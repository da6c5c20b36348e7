package culm.bench.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Limits;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.Chart;
import culm.figures.chart.Series;

/** Charts of blanks one by one. */
public final class LogCharts {
    private static final Role[] ROLES = {Role.THREAD, Role.BARK, Role.DOES_NOT, Role.BRASS_EDGE};
    private static final Series.Marker[] SIGNS = {Series.Marker.DOT, Series.Marker.SQUARE, Series.Marker.TRIANGLE, Series.Marker.CROSS};

    private LogCharts() {
    }

    /** Turns left, blank after blank in the order of the log, with my limits as lines; a group with its own sign. Beyond four groups the smallest share one. */
    public static Drawing turns(List<Tied> log, GroupBy by, Limits limits, double width, double height, TextMeasure measure) {
        Map<String, List<double[]>> groups = new LinkedHashMap<>();
        for (int i = 0; i < log.size(); i++) {
            Tied tied = log.get(i);
            int place = i + 1;
            tied.seen().turns().ifPresent(t -> groups.computeIfAbsent(by.of(tied).isEmpty() ? "not noted" : by.of(tied), k -> new ArrayList<>()).add(new double[] {place, t}));
        }
        List<Series> series = new ArrayList<>();
        double last = Math.max(2, log.size());
        for (double limit : new double[] {limits.get(Limits.TURNS_FEWEST), limits.get(Limits.TURNS_MOST)}) {
            series.add(new Series(limit == limits.get(Limits.TURNS_FEWEST) ? "fewest allowed" : "most allowed", List.of(new double[] {1, limit}, new double[] {last, limit}), true,
                    Series.Marker.NONE, Role.QUIET, limit == limits.get(Limits.TURNS_FEWEST) ? Dash.DASHED : Dash.DOTTED));
        }
        List<Map.Entry<String, List<double[]>>> largest = groups.entrySet().stream().sorted((a, b) -> b.getValue().size() - a.getValue().size()).toList();
        for (int i = 0; i < largest.size(); i++) {
            if (i < SIGNS.length - 1 || largest.size() == SIGNS.length) {
                series.add(Series.points(largest.get(i).getKey(), largest.get(i).getValue(), SIGNS[i], ROLES[i]));
            } else {
                List<double[]> rest = new ArrayList<>();
                largest.subList(i, largest.size()).forEach(e -> rest.addAll(e.getValue()));
                series.add(Series.points("all others", rest, SIGNS[SIGNS.length - 1], ROLES[SIGNS.length - 1]));
                break;
            }
        }
        return new Chart("Turns left when the sides closed, by " + by.words(), AxisLabel.counting("blank, in the order of the log"), new AxisLabel("turns left", ""), series, List.of(), true)
                .draw(width, height, measure).drawing();
    }

    /** Planned against seen: turns left that the model expects with the lengths as measured, and those that were seen; on the line both agree. */
    public static Drawing expected(List<PlannedSeen> compared, double width, double height, TextMeasure measure) {
        List<double[]> points = new ArrayList<>();
        double low = 0;
        double high = 2;
        for (PlannedSeen c : compared) {
            if (c.turnsHere().isPresent()) {
                double seen = c.tied().seen().turns().orElseThrow();
                double expected = seen - c.turnsHere().getAsDouble();
                points.add(new double[] {expected, seen});
                low = Math.min(low, Math.min(seen, expected));
                high = Math.max(high, Math.max(seen, expected));
            }
        }
        Series line = new Series("both agree", List.of(new double[] {low, low}, new double[] {high, high}), true, Series.Marker.NONE, Role.QUIET, Dash.DASHED);
        return new Chart("Turns left, expected and seen", new AxisLabel("expected", "turns"), new AxisLabel("seen", "turns"), List.of(line, Series.points("blanks", points, Series.Marker.DOT, Role.THREAD)),
                List.of(), false).draw(width, height, measure).drawing();
    }
}
