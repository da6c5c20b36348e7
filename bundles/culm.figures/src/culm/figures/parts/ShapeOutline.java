package culm.figures.parts;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.Ticks;
import culm.figures.label.Label;
import culm.figures.label.LabelRows;
import culm.figures.label.PlacedLabel;
import culm.geometry.GeometryException;
import culm.geometry.shape.ShapeWidth;

/** Outline of the cane as cut, from the fold to its end, true to scale; its width is written at the measured places, or every 5 mm or so. */
public final class ShapeOutline {
    private static final String CAPTION = "Shape as cut, width over the distance from the fold, ";
    private static final double MARGIN = 24;
    private static final double TOP = 34;
    private static final double ROW = 16;
    /** Distance at least of two widths that are written where none were measured, mm. */
    private static final double APART = 4.9;

    private ShapeOutline() {
    }

    /** The outline with its lengths in mm; see {@link #draw(Blank, double, TextMeasure, Lengths)}. */
    public static Drawing draw(Blank blank, double width, TextMeasure measure) {
        return draw(blank, width, measure, Lengths.MM);
    }

    /**
     * Draws it, filling the width.
     *
     * @param width at least 120, drawing units
     * @param unit  in what lengths are written
     */
    public static Drawing draw(Blank blank, double width, TextMeasure measure, Lengths unit) {
        double w = Math.max(120, width);
        try {
            return draw(blank, blank.parts().width(), blank.parts().foldedLength(), w, measure, unit);
        } catch (GeometryException e) {
            return Refused.draw(CAPTION + unit.sign(), unit.told(e.told()), w, 120, measure);
        }
    }

    private static Drawing draw(Blank blank, ShapeWidth shape, double folded, double width, TextMeasure measure, Lengths unit) {
        double from = Math.max(0, shape.from());
        double to = Math.min(folded, shape.to());
        if (!(to > from)) {
            return Refused.draw(CAPTION + unit.sign(), "The widths do not reach the cane.", width, 120, measure);
        }
        Scale scale = new Scale(0, folded, MARGIN, width - MARGIN);
        List<double[]> edge = new ArrayList<>();
        double half = 0;
        for (int i = 0; i <= 160; i++) {
            double s = from + (to - from) * i / 160;
            edge.add(new double[] {s, shape.at(s) / 2});
            half = Math.max(half, shape.at(s) / 2);
        }
        double extra = Double.isNaN(blank.number(Inputs.EARS_WIDTH)) ? 0 : blank.number(Inputs.EARS_WIDTH);
        String caption = CAPTION + unit.sign();
        String enlarged = "drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1";
        boolean beside = measure.width(caption, Size.BODY, false) + measure.width(enlarged, Size.SMALL, false) + 40 < width;
        double middle = TOP + (beside ? 0 : ROW) + (half + extra) * scale.perMm();
        double line = middle + (half + extra) * scale.perMm() + 16;
        List<PlacedLabel> labels = new LabelRows(measure, Size.SMALL, 4, width - 4).place(labels(shape, from, to, scale, unit));
        Pen pen = new Pen();
        pen.text(caption, 12, 16, Anchor.START, Size.BODY, Role.INK);
        pen.text(enlarged, beside ? width - 12 : 12, beside ? 16 : 16 + ROW, beside ? Anchor.END : Anchor.START, Size.SMALL, Role.QUIET);
        pen.group(Part.CANE, "shape", p -> {
            ears(p, blank, shape, scale, middle);
            p.shape(outline(edge, scale, middle), Style.fill(Role.CANE).edged(Role.CANE_EDGE, 1.2));
        });
        pen.group(Part.MARKS, "measured widths", p -> labels.forEach(l -> {
            double up = shape.at(Math.max(from, Math.min(to, scale.z(l.label().x())))) / 2 * scale.perMm();
            double row = line + 38 + l.row() * ROW;
            p.shape(Path.line(l.label().x(), middle - up, l.label().x(), row + 1), Style.line(Role.QUIET, 0.7).broken(Dash.DASHED));
            p.text(l.text(), l.left() ? l.to() : l.from(), row, l.left() ? Anchor.END : Anchor.START, Size.SMALL, Role.INK);
        }));
        ruler(pen, scale, line, measure, unit);
        int rows = labels.stream().mapToInt(l -> l.row() + 1).max().orElse(1);
        return pen.drawing(width, line + 38 + rows * ROW, caption, "Drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1, true to scale.");
    }

    private static Path outline(List<double[]> edge, Scale scale, double middle) {
        List<double[]> round = new ArrayList<>();
        edge.forEach(p -> round.add(new double[] {scale.x(p[0]), middle - p[1] * scale.perMm()}));
        for (int i = edge.size() - 1; i >= 0; i--) {
            round.add(new double[] {scale.x(edge.get(i)[0]), middle + edge.get(i)[1] * scale.perMm()});
        }
        return Path.polygon(round);
    }

    private static void ears(Pen p, Blank blank, ShapeWidth shape, Scale scale, double middle) {
        double extra = blank.number(Inputs.EARS_WIDTH);
        double length = Math.min(blank.number(Inputs.EARS_LENGTH), shape.to());
        if (!(extra > 0 && length > shape.from())) {
            return;
        }
        List<double[]> ears = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double s = shape.from() + (length - shape.from()) * i / 24;
            ears.add(new double[] {s, shape.at(s) / 2 + extra * Math.min(1, 3 * (1 - s / length))});
        }
        p.shape(outline(ears, scale, middle), Style.tint(Role.CANE, 0.4).edged(Role.CANE_EDGE, Style.THIN).broken(Dash.DASHED));
    }

    private static List<Label> labels(ShapeWidth shape, double from, double to, Scale scale, Lengths unit) {
        List<Double> places = new ArrayList<>(List.of(from));
        double[] measured = shape.breaks();
        if (measured.length > 0) {
            for (double s : measured) {
                places.add(s);
            }
        } else {
            Ticks.stepped(unit.of(from), unit.of(to), Ticks.niceStep(unit.of(APART))).values().forEach(s -> places.add(unit.toMm(s)));
        }
        places.add(to);
        return places.stream().filter(s -> s >= from && s <= to).distinct().map(s -> {
            String width = unit.fixed(shape.at(s), 2);
            return new Label("at" + s, scale.x(s), width + " at " + unit.brief(s), width, false, Role.INK);
        }).toList();
    }

    /** Every number has its place; the line of a width that comes down there goes on below it. */
    private static void ruler(Pen pen, Scale scale, double y, TextMeasure measure, Lengths unit) {
        pen.group(Part.RULER, "ruler, " + unit.sign(), p -> {
            p.line(scale.left(), y, scale.right(), y, Role.INK, 1);
            PathBuilder lines = Path.start();
            Ticks numbered = unit.ticks(0, scale.to(), (scale.right() - scale.left()) / 50);
            for (double s : unit.ticks(0, scale.to(), (scale.right() - scale.left()) / 5).values()) {
                lines.move(scale.x(unit.toMm(s)), y).line(scale.x(unit.toMm(s)), y + 3);
            }
            for (double s : numbered.values()) {
                double x = scale.x(unit.toMm(s));
                lines.move(x, y).line(x, y + 6);
                double half = measure.width(numbered.label(s), Size.SMALL, false) / 2 + 2;
                p.shape(Path.box(new Box(x - half, y + 7, 2 * half, 13)), Style.fill(Role.PAPER));
                p.text(numbered.label(s), x, y + 18, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            }
            p.shape(lines.path(), Style.line(Role.INK, Style.THIN));
        });
    }
}
