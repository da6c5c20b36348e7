package culm.bench.template;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.paper.Paper;
import culm.figures.paper.Sheet;
import culm.geometry.section.Point;

/** Both outlines 1:1, the widths every few millimetres, and a width gauge on one sheet of paper with its check ruler. */
public final class TemplateSheet {
    private static final double U = Drawing.UNITS_PER_MM;
    private static final double WIDTH = 180;
    private static final double HAIR = 0.35;

    private TemplateSheet() {
    }

    /**
     * The page.
     * @throws IllegalArgumentException when the outline is larger than the sheet
     */
    public static Drawing draw(Template template, String title, Paper paper) {
        double folded = template.outline().to();
        Pen pen = new Pen();
        double middle = WIDTH / 2;
        double half = half(template.flat());
        double y = 4;
        caption(pen, "Flat: both blades, width along the bark. Cut on the line, fold on the broken one.", y);
        y += 5 + half;
        outline(pen, template.flat(), middle, y, "flat outline");
        broken(pen, middle, y - half - 2, middle, y + half + 2);
        pen.text("fold", (middle + 1) * U, (y - half - 1) * U, Anchor.START, Size.SMALL, Role.QUIET);
        y += half + 9;
        double halfFolded = half(template.folded());
        double left = middle - folded / 2;
        caption(pen, "Folded: one blade, width straight across, as a caliper measures it.", y);
        y += 5 + halfFolded;
        outline(pen, template.folded(), left, y, "folded outline");
        broken(pen, left + template.outline().from(), y - halfFolded - 2, left + template.outline().from(), y + halfFolded + 2);
        y += halfFolded + 9;
        caption(pen, "Widths of the cane as cut, mm; without ears.", y);
        y = widths(pen, template, y + 6);
        double[] range = range(template);
        caption(pen, "Width gauge: lay the cane across and move it until its edges touch both lines.", y + 7);
        y = WidthGauge.draw(pen, 6, y + 12, range[0], range[1]);
        Drawing drawing = pen.drawing(WIDTH * U, (y + 2) * U, title, String.format(java.util.Locale.ROOT, "Flat and folded outline, 1 : 1, folded length %.1f mm.", folded));
        return Sheet.of(drawing, title, paper);
    }

    private static double half(List<Point> points) {
        return points.stream().mapToDouble(Point::y).max().orElse(0);
    }

    private static void caption(Pen pen, String words, double y) {
        pen.text(words, 0, y * U, Anchor.START, Size.BODY, Role.QUIET);
    }

    private static void outline(Pen pen, List<Point> points, double x, double y, String what) {
        pen.group(Part.CANE, what, p -> p.shape(Path.polygon(points.stream().map(q -> new double[] {(x + q.x()) * U, (y - q.y()) * U}).toList()), Style.line(Role.INK, HAIR)));
    }

    private static void broken(Pen pen, double x1, double y1, double x2, double y2) {
        pen.shape(Path.line(x1 * U, y1 * U, x2 * U, y2 * U), Style.line(Role.INK, HAIR).broken(Dash.DASHED));
    }

    private static double[] range(Template template) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double s = template.outline().from(); s <= template.outline().to(); s += 0.25) {
            double width = template.outline().width().at(s);
            low = Math.min(low, width);
            high = Math.max(high, width);
        }
        return new double[] {Math.floor(low * 2) / 2, Math.ceil(high * 2) / 2};
    }

    /** A row of distances and one of widths, every other millimetre count so that about a dozen stand side by side. */
    private static double widths(Pen pen, Template template, double y) {
        double from = template.outline().from();
        double to = template.outline().to();
        double step = Math.max(1, Math.ceil((to - from) / 14));
        double column = WIDTH / 17;
        pen.text("from the fold", 0, y * U, Anchor.START, Size.SMALL, Role.QUIET);
        pen.text("width", 0, (y + 6) * U, Anchor.START, Size.SMALL, Role.QUIET);
        int i = 2;
        List<Double> places = new ArrayList<>();
        for (double s = from; s < to - 0.5; s += step) {
            places.add(s);
        }
        places.add(to);
        for (double place : places) {
            double x = (i + 0.9) * column;
            pen.text(Numbers.given(place).replace(".0", ""), x * U, y * U, Anchor.END, Size.SMALL, Role.QUIET);
            pen.bold(Numbers.fixed(template.outline().width().at(place), 2), x * U, (y + 6) * U, Anchor.END, Size.BODY, Role.INK);
            i++;
        }
        return y + 8;
    }
}
