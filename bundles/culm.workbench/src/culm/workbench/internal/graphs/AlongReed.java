package culm.workbench.internal.graphs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.SeamPoint;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Lengths;
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
import culm.geometry.GeometryException;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.Staple;
import culm.model.text.Numbers;
import culm.workbench.internal.sharing.MissingNotice;

/** Graphs along the reed below each other on one axis: the shape as cut, the bore, how far the sides are open. */
final class AlongReed {
    private static final int POINTS = 160;
    private static final double RULER = 50;
    private final Assessment assessment;
    private final Blank blank;
    private final Scale scale;
    private final Lengths unit;
    private final List<Lane> lanes = new ArrayList<>();
    private String problem = "";

    AlongReed(Assessment assessment, Scale scale, Lengths unit) {
        this.assessment = assessment;
        this.blank = assessment.blank();
        this.scale = scale;
        this.unit = unit;
        try {
            lanes.add(shape());
            lanes.add(bore());
        } catch (GeometryException e) {
            problem = MissingNotice.types(blank).isEmpty() ? unit.told(e.told()) : ""; // a type that is not here is told above
        }
        lanes.add(open());
    }

    private Lane shape() {
        ShapeWidth width = blank.parts().width();
        double fold = blank.number(Inputs.TIE_LENGTH);
        double from = Math.max(0, width.from());
        double to = Math.min(blank.parts().foldedLength(), width.to());
        List<double[]> points = new ArrayList<>();
        for (int i = POINTS; i >= 0; i--) {
            double s = from + (to - from) * i / POINTS;
            points.add(new double[] { fold - s, width.at(s) / 2 });
        }
        return new Lane("Shape as cut, drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1, widths in " + unit.sign(), points, Role.CANE_EDGE, true, unit);
    }

    private Lane bore() {
        Staple staple = blank.parts().staple();
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double z = staple.length() * i / POINTS;
            points.add(new double[] { z, staple.bore(z).area() });
        }
        return new Lane("Bore area, " + unit.areaSign(), points, Role.BRASS_EDGE, false, unit);
    }

    private Lane open() {
        List<double[]> points = new ArrayList<>();
        for (SeamPoint p : assessment.closing().course()) {
            points.add(new double[] { p.z(), p.open() });
        }
        return new Lane("How far the sides are open, " + unit.sign() + "; below zero they are pinched", points, Role.BARK, false, unit);
    }

    /** Draws it into a height. */
    Drawing draw(double height, TextMeasure measure) {
        Pen pen = new Pen();
        double fixed = RULER + 8;
        long flexible = lanes.stream().filter(l -> !l.mirrored()).count();
        double taken = lanes.stream().filter(Lane::mirrored).mapToDouble(l -> l.height(scale, 0)).sum();
        double each = Math.max(90, (height - fixed - taken) / Math.max(1, flexible));
        double y = 6;
        if (!problem.isEmpty()) {
            pen.text(problem, scale.left(), y + 14, Anchor.START, Size.BODY, Role.DOES_NOT);
            y += 24;
        }
        boolean ruled = false;
        for (Lane lane : lanes) {
            double needed = lane.height(scale, each);
            lane.draw(pen, scale, y, needed);
            y += needed;
            if (!ruled) {
                ruler(pen, y + 4);
                y += RULER;
                ruled = true;
            }
        }
        return pen.drawing(scale.right() + scale.left(), Math.max(y, 1), "Graphs along the reed", "Shape as cut, bore area and how far the sides are open, over the height from the bottom of the staple.");
    }

    private void ruler(Pen pen, double y) {
        Ticks fine = unit.ticks(scale.from(), scale.to(), (scale.right() - scale.left()) / 6);
        Ticks numbered = unit.ticks(scale.from(), scale.to(), (scale.right() - scale.left()) / 55);
        PathBuilder lines = Path.start().move(scale.left(), y).line(scale.right(), y);
        fine.values().forEach(z -> lines.move(x(z), y).line(x(z), y + 4));
        numbered.values().forEach(z -> lines.move(x(z), y).line(x(z), y + 8));
        pen.group(Part.RULER, "ruler, " + unit.sign(), p -> p.shape(lines.path(), Style.line(Role.INK, Style.THIN)));
        numbered.values().forEach(z -> pen.text(numbered.label(z), x(z), y + 20, Anchor.MIDDLE, Size.SMALL, Role.QUIET));
        pen.text("height from the bottom of the staple, " + unit.sign(), scale.left(), y + 34, Anchor.START, Size.SMALL, Role.QUIET);
    }

    private double x(double shown) {
        return scale.x(unit.toMm(shown));
    }

    /** What the graphs say at a height. */
    String readout(double z) {
        List<String> says = new ArrayList<>();
        double s = blank.number(Inputs.TIE_LENGTH) - z;
        for (Lane lane : lanes) {
            OptionalDouble value = lane.at(z);
            if (value.isPresent()) {
                says.add(lane.mirrored() ? unit.text(2 * value.getAsDouble(), 2) + " wide, " + unit.text(s, 1) + " from the fold"
                        : lane.role() == Role.BRASS_EDGE ? "bore " + unit.area(value.getAsDouble())
                                : (value.getAsDouble() < 0 ? "pinched by " : "open by ") + unit.text(Math.abs(value.getAsDouble()), 2));
            }
        }
        return String.join("  ·  ", says);
    }

    /** The numbers in mm, row by row over the height. */
    static Figure.Table table(Optional<Assessment> assessment) {
        List<String> heads = List.of("height mm", "width as cut mm", "bore area mm²", "sides open by mm");
        if (assessment.isEmpty()) {
            return new Figure.Table(heads, List.of());
        }
        double top = assessment.get().blank().number(Inputs.TIE_LENGTH);
        AlongReed graphs = new AlongReed(assessment.get(), new Scale(0, top, 0, top), Lengths.MM);
        List<double[]> rows = new ArrayList<>();
        for (double z = 0; z <= top + 1e-9; z += 0.5) {
            double[] row = { z, 0, 0, 0 };
            double at = z;
            for (int i = 0; i < graphs.lanes.size(); i++) {
                Lane lane = graphs.lanes.get(i);
                row[lane.mirrored() ? 1 : lane.role() == Role.BRASS_EDGE ? 2 : 3] = lane.at(at).orElse(0) * (lane.mirrored() ? 2 : 1);
            }
            rows.add(row);
        }
        return new Figure.Table(heads, rows);
    }
}
