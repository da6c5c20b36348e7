package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Lines;
import culm.figures.Part;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.TextMeasure;

/** Names of the series below the caption, in as many lines as they need. */
final class Legend {
    private static final double SIGN = 22;
    private static final double APART = 16;
    private final List<Series> series;
    private final TextMeasure measure;
    private final List<double[]> places = new ArrayList<>();
    private double height;

    Legend(List<Series> all, double width, TextMeasure measure) {
        this.series = all.stream().filter(s -> !s.name().isEmpty()).toList();
        this.measure = measure;
        double x = 12;
        double line = 0;
        for (Series s : series) {
            double needs = SIGN + measure.width(s.name(), Size.SMALL, false);
            if (x > 12 && x + needs > width - 12) {
                x = 12;
                line++;
            }
            places.add(new double[] {x, line});
            x += needs + APART;
        }
        height = series.isEmpty() ? 0 : (line + 1) * Lines.height(measure, Size.SMALL) + 4;
    }

    double height() {
        return height;
    }

    void draw(Pen pen, double top) {
        pen.group(Part.LEGEND, "", p -> {
            for (int i = 0; i < series.size(); i++) {
                double x = places.get(i)[0];
                double y = top + places.get(i)[1] * Lines.height(measure, Size.SMALL);
                Marks.sample(p, series.get(i), x, y - 4);
                p.text(series.get(i).name(), x + SIGN, y, Anchor.START, Size.SMALL, Role.INK);
            }
        });
    }
}
