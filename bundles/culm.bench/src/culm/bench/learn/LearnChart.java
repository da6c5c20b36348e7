package culm.bench.learn;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.Chart;
import culm.figures.chart.Series;

/** What the blanks teach one by one, in the order they were tied, with the mean and its 95 % interval; so that a drift is seen. */
public final class LearnChart {
    private LearnChart() {
    }

    /** Draws it. @param learned something that was said */
    public static Drawing draw(Learned learned, double width, double height, TextMeasure measure) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < learned.lessons().size(); i++) {
            points.add(new double[] {i + 1, learned.lessons().get(i).delta() / learned.perTurn()});
        }
        double last = Math.max(2, points.size());
        double half = learned.half() / learned.perTurn();
        List<Series> series = List.of(level("none", 0, last, Role.QUIET, Dash.DOTTED), level("learned", learned.turns(), last, Role.THREAD, Dash.SOLID),
                level("95 % interval", learned.turns() - half, last, Role.THREAD, Dash.DASHED), level("", learned.turns() + half, last, Role.THREAD, Dash.DASHED),
                Series.points("blanks", points, Series.Marker.DOT, Role.BARK));
        return new Chart("Turns more than the model says, blank by blank", AxisLabel.counting("blank, in the order they were tied"), new AxisLabel("turns more", ""), series, List.of(), true)
                .draw(width, height, measure).drawing();
    }

    private static Series level(String name, double value, double last, Role role, Dash dash) {
        return new Series(name, List.of(new double[] {1, value}, new double[] {last, value}), true, Series.Marker.NONE, role, dash);
    }
}
