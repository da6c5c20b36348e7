package culm.figures.parts;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.Chart;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.Series;
import culm.geometry.GeometryException;
import culm.geometry.staple.Staple;

/** Area of the bore along the staple, mm^2 over mm from the bottom. */
public final class BoreArea {
    private static final int POINTS = 120;
    private static final String CAPTION = "Bore area along the staple";

    private BoreArea() {
    }

    /** The chart, or the reason why there is none. */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure) {
        try {
            return new Chart(CAPTION, new AxisLabel("from the bottom of the staple", "mm"), new AxisLabel("area", "mm\u00b2"),
                    List.of(Series.line("", points(blank.parts().staple()), Role.BRASS_EDGE)), List.of(), true).draw(width, height, measure);
        } catch (GeometryException e) {
            Drawing refused = Refused.draw(CAPTION, e.getMessage(), width, height, measure);
            return new ChartDrawing(refused, new Box(0, 0, width, height), new Axis(0, 1, 0, width), new Axis(0, 1, height, 0));
        }
    }

    /** Points (z, area). */
    static List<double[]> points(Staple staple) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double z = staple.length() * i / POINTS;
            points.add(new double[] {z, staple.bore(z).area()});
        }
        return points;
    }
}
