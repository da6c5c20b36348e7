package culm.figures.parts;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.Chart;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.Series;
import culm.geometry.GeometryException;
import culm.geometry.staple.Staple;

/** Area of the bore along the staple over the height from its bottom. */
public final class BoreArea {
    private static final int POINTS = 120;
    private static final String CAPTION = "Bore area along the staple";

    private BoreArea() {
    }

    /** The chart in mm and mm², or the reason why there is none. */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure) {
        return draw(blank, width, height, measure, Lengths.MM);
    }

    /** The chart, or the reason why there is none. @param unit in what it is written; the axes of what is returned are in it */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure, Lengths unit) {
        try {
            return new Chart(CAPTION, new AxisLabel("from the bottom of the staple", unit.sign()), new AxisLabel("area", unit.areaSign()),
                    List.of(Series.line("", points(blank.parts().staple(), unit), Role.BRASS_EDGE)), List.of(), true).draw(width, height, measure);
        } catch (GeometryException e) {
            Drawing refused = Refused.draw(CAPTION, unit.told(e.told()), width, height, measure);
            return new ChartDrawing(refused, new Box(0, 0, width, height), new Axis(0, 1, 0, width), new Axis(0, 1, height, 0));
        }
    }

    /** Points (z, area) in a unit. */
    static List<double[]> points(Staple staple, Lengths unit) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double z = staple.length() * i / POINTS;
            points.add(new double[] {unit.of(z), unit.ofArea(staple.bore(z).area())});
        }
        return points;
    }
}
