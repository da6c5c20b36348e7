package culm.figures.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import culm.blank.Blank;
import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.Chart;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.Series;
import culm.geometry.GeometryException;
import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.geometry.shape.Edge;

/** The gouge: the cane's section as it is, and its thickness over the distance from the middle, enlarged. */
public final class GougeThickness {
    private static final String CAPTION = "Gouge";
    private static final int POINTS = 60;

    private GougeThickness() {
    }

    /** Both with their lengths in mm, as wide as the blade is at the fold; see {@link #draw(Blank, double, double, TextMeasure, Lengths, double)}. */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure) {
        return draw(blank, width, height, measure, Lengths.MM, 0);
    }

    /** Both, as wide as the blade is at the fold; see {@link #draw(Blank, double, double, TextMeasure, Lengths, double)}. */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure, Lengths unit) {
        return draw(blank, width, height, measure, unit, 0);
    }

    /**
     * Both, one below the other.
     *
     * @param width  at least 160, drawing units
     * @param height at least 260, drawing units
     * @param unit   in what lengths are written; the axes of what is returned are in it
     * @param reach  drawn so far along the bark to each side at least, mm, even where the blade is narrower
     */
    public static ChartDrawing draw(Blank blank, double width, double height, TextMeasure measure, Lengths unit, double reach) {
        double w = Math.max(160, width);
        double h = Math.max(260, height);
        try {
            return draw(blank, blank.parts().gouge(), w, h, measure, unit, reach);
        } catch (GeometryException e) {
            Drawing refused = Refused.draw(CAPTION, unit.told(e.told()), w, h, measure);
            return new ChartDrawing(refused, new Box(0, 0, w, h), new Axis(0, 1, 0, w), new Axis(0, 1, h, 0));
        }
    }

    private static ChartDrawing draw(Blank blank, Gouge gouge, double w, double h, TextMeasure measure, Lengths unit, double reach) {
        double s = Math.max(0, blank.parts().width().from());
        double blade = Edge.barkAngle(blank.parts().width().at(s), blank.cut().measure(), gouge.tubeRadius());
        double angle = Math.max(blade, Math.min(reach / gouge.tubeRadius(), Math.PI / 2));
        Pen pen = new Pen();
        double top = trueSection(pen, gouge, gouge.at(0), angle, w, h * 0.42);
        List<Series> series = new ArrayList<>();
        series.add(Series.line(gouge.changesAlong() ? "at the fold" : "", course(gouge, gouge.at(0), angle, unit), Role.BARK));
        if (gouge.changesAlong()) {
            series.add(new Series("at the end of the cane", course(gouge, gouge.at(Double.MAX_VALUE), angle, unit), true, Series.Marker.NONE, Role.BARK, Dash.DASHED));
        }
        ChartDrawing unnamed = thickness("", series, unit).draw(w, h - top, measure);
        ChartDrawing chart = thickness(caption(unnamed, w, measure), series, unit).draw(w, h - top, measure);
        pen.add(chart.drawing().at(0, top));
        Axis y = new Axis(chart.y().from(), chart.y().to(), chart.y().start() + top, chart.y().end() + top);
        return new ChartDrawing(pen.drawing(w, h, CAPTION, "The cane's section as it is, and its thickness over the distance from the middle."),
                chart.plot().moved(0, top), chart.x(), y);
    }

    private static Chart thickness(String caption, List<Series> series, Lengths unit) {
        return new Chart(caption, new AxisLabel("along the bark from the middle", unit.sign()), new AxisLabel("thickness", unit.sign()), series, List.of(), false);
    }

    /** By how much it is enlarged against what: the axes say so once they are laid out. */
    private static String caption(ChartDrawing chart, double width, TextMeasure measure) {
        double up = Math.abs((chart.y().end() - chart.y().start()) / (chart.y().to() - chart.y().from()));
        double across = Math.abs((chart.x().end() - chart.x().start()) / (chart.x().to() - chart.x().from()));
        String caption = "Thickness, enlarged " + Numbers.fixed(up / across, 1) + " : 1";
        return Stream.of(" against the length along the bark", " against the bark").map(against -> caption + against)
                .filter(whole -> measure.width(whole, Size.BODY, false) + 24 <= width).findFirst().orElse(caption);
    }

    /** Points (distance along the bark, thickness) in a unit, both sides. */
    static List<double[]> course(Gouge gouge, GougeSection section, double angle, Lengths unit) {
        List<double[]> points = new ArrayList<>();
        for (int i = -POINTS; i <= POINTS; i++) {
            double phi = angle * i / POINTS;
            points.add(new double[] {unit.of(gouge.tubeRadius() * phi), unit.of(section.thickness(Math.abs(phi)))});
        }
        return points;
    }

    private static double trueSection(Pen pen, Gouge gouge, GougeSection section, double angle, double w, double h) {
        double r = gouge.tubeRadius();
        double deep = r - (r - section.thickness(angle)) * Math.cos(angle);
        double perMm = Math.min((w - 32) / (2 * r * Math.sin(angle)), (h - 44) / Math.max(0.1, deep));
        double top = 32;
        List<double[]> round = new ArrayList<>();
        List<double[]> bark = new ArrayList<>();
        for (int i = -POINTS; i <= POINTS; i++) {
            double phi = angle * i / POINTS;
            bark.add(new double[] {w / 2 + r * Math.sin(phi) * perMm, top + r * (1 - Math.cos(phi)) * perMm});
        }
        round.addAll(bark);
        for (int i = POINTS; i >= -POINTS; i--) {
            double phi = angle * i / POINTS;
            double inner = r - section.thickness(Math.abs(phi));
            round.add(new double[] {w / 2 + inner * Math.sin(phi) * perMm, top + (r - inner * Math.cos(phi)) * perMm});
        }
        pen.text("Gouge as it is, drawn " + Numbers.fixed(perMm / Drawing.UNITS_PER_MM, 1) + " : 1", 12, 16, Anchor.START, Size.BODY, Role.INK);
        pen.group(Part.CANE, "gouged cane", p -> {
            p.shape(Path.polygon(round), Style.fill(Role.CANE).edged(Role.CANE_EDGE, 1));
            p.shape(Path.through(bark), Style.line(Role.BARK, 2));
        });
        return top + deep * perMm + 16;
    }
}
