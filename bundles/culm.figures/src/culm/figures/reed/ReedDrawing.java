package culm.figures.reed;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Lengths;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pausing;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * The reed view with what is needed to find the way back from a place on the page.
 *
 * @param drawing the drawing
 * @param scale   the axis that all share
 * @param wide    where the wide side lies
 * @param cut     where the cut lies
 * @param ruler   where the ruler and its labels lie
 * @param graph   where the graph lies
 * @param open    the graph's axis up the page, mm
 * @param unit    in what lengths are written
 */
public record ReedDrawing(Drawing drawing, Scale scale, Box wide, Box cut, Box ruler, Box graph, Axis open, Lengths unit) {
    /** The pointer's height as one thin line through all drawings that pauses behind their labels, with its number at the top; painted over the drawing. */
    public Group pointer(double z, TextMeasure measure) {
        Pen pen = new Pen();
        double x = scale.x(z);
        pen.shape(Pausing.up(x, wide.y() - 4, graph.bottom(), drawing.items(), measure), Style.line(Role.INK, 0.7));
        String number = unit.text(z, 1);
        double half = measure.width(number, Size.SMALL, false) / 2 + 4;
        double middle = Math.max(scale.left() + half, Math.min(scale.right() - half, x));
        double base = wide.y() - 8;
        pen.shape(Path.box(new Box(middle - half, base - measure.ascent(Size.SMALL), 2 * half, measure.line(Size.SMALL) + 1), 3),
                Style.fill(Role.PAPER));
        pen.text(number, middle, base, Anchor.MIDDLE, Size.SMALL, Role.INK);
        return new Group(Part.POINTER, "", 0, 0, java.util.Optional.empty(), pen.items());
    }
}
