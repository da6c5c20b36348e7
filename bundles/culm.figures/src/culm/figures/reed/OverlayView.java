package culm.figures.reed;

import java.util.List;

import culm.blank.Limits;
import culm.blank.Mark;
import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Item;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Pausing;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.geometry.GeometryException;

/** Two reeds on one axis: the first in its materials, the second as broken lines over it, the marks of both on rulers of their own. */
public final class OverlayView {
    private static final double CAPTION = 22;
    private static final double GAP = 12;
    private static final double RULER = 20;
    private static final double MARGIN = 12;
    private static final double LINE = 1.3;
    private final Reed first;
    private final Reed second;
    private final Scale scale;
    private final TextMeasure measure;
    private final Limits limits;
    private final Lengths unit;
    private final Outlines ofFirst;
    private final Outlines ofSecond;

    private OverlayView(Reed first, Reed second, Limits limits, double width, TextMeasure measure, Lengths unit) {
        this.first = first;
        this.second = second;
        this.limits = limits;
        this.unit = unit;
        this.measure = measure;
        this.scale = new Scale(0, Math.max(first.top(), second.top()), MARGIN, Math.max(MARGIN + 1, width - MARGIN));
        this.ofFirst = first.outlines();
        this.ofSecond = second.outlines();
    }

    /**
     * Draws both, true to scale.
     *
     * @param firstName what the first is called
     * @param secondName what the second is called
     * @param width drawing units, at least some ten letters
     * @param unit in what lengths are written
     */
    public static Drawing draw(Reed first, String firstName, Reed second, String secondName, Limits limits, double width, TextMeasure measure,
            Lengths unit) {
        return new OverlayView(first, second, limits, width, measure, unit).run(firstName, secondName);
    }

    private Drawing run(String firstName, String secondName) {
        Pen pen = new Pen();
        double left = scale.left();
        double width = scale.right() - left;
        double halfWide = Math.max(new WideSide(first, ofFirst).half(), new WideSide(second, ofSecond).half());
        double halfCut = Math.max(new CutView(first, ofFirst).half(), new CutView(second, ofSecond).half());
        Box wide = new Box(left, CAPTION, width, 2 * halfWide * scale.perMm());
        Box cut = new Box(left, wide.bottom() + GAP + CAPTION, width, 2 * halfCut * scale.perMm());
        pen.text("Wide side", left, wide.y() - 8, Anchor.START, Size.BODY, Role.QUIET);
        pen.text("drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1", scale.right(), wide.y() - 8, Anchor.END, Size.SMALL, Role.QUIET);
        pen.text("Narrow side, cut through the middle", left, cut.y() - 8, Anchor.START, Size.BODY, Role.QUIET);
        Lane wideLane = new Lane(scale, wide.y() + wide.height() / 2, 1);
        Lane cutLane = new Lane(scale, cut.y() + cut.height() / 2, 1);
        if (first.drawable()) {
            new WideSide(first, ofFirst).draw(pen, wideLane);
            new CutView(first, ofFirst).draw(pen, cutLane);
        }
        if (second.drawable()) {
            pen.group(Part.CANE, secondName, p -> {
                wide(p, wideLane);
                cut(p, cutLane);
            });
        }
        double ofFirst = cut.bottom() + GAP;
        double ofSecond = marks(pen, first, firstName + ", filled", ofFirst) + GAP;
        double y = marks(pen, second, secondName + ", broken lines", ofSecond);
        List<Item> lettered = pen.items();
        closing(pen, first, Dash.SOLID, ofFirst, lettered);
        closing(pen, second, Dash.DASHED, ofSecond, lettered);
        return pen.drawing(scale.right() + left, y + 4, firstName + " and " + secondName, "Both reeds on one axis from the bottom of the staple to the fold.");
    }

    private void wide(Pen p, Lane lane) {
        line(p, lane, ofSecond.points(0, second.stapleTop(), z -> second.outside(z).halfWide()));
        if (ofSecond.caneWide().size() > 1) {
            line(p, lane, ofSecond.caneWide());
        }
    }

    private void cut(Pen p, Lane lane) {
        line(p, lane, ofSecond.points(0, second.stapleTop(), z -> second.outside(z).halfNarrow()));
        try {
            line(p, lane, ofSecond.points(0, second.stapleTop(), z -> second.bore(z).halfNarrow()));
        } catch (GeometryException e) {
            p.text("no bore: " + unit.told(e.told()), lane.x(0), lane.y(0), Anchor.START, Size.SMALL, Role.DOES_NOT);
        }
        double from = Math.max(0, second.caneEnd());
        if (from < second.fold()) {
            line(p, lane, ofSecond.points(from, second.fold(), ofSecond::caneOutside));
            line(p, lane, ofSecond.points(from, second.fold(), ofSecond::caneInside));
        }
    }

    private static void line(Pen p, Lane lane, List<double[]> outline) {
        p.shape(lane.lines(outline), Style.line(Role.INK, LINE).broken(Dash.DASHED));
    }

    /** A ruler with the marks of one. */
    private double marks(Pen pen, Reed reed, String name, double top) {
        double line = line(top);
        pen.text(name, scale.left(), top + 8, Anchor.START, Size.SMALL, Role.QUIET);
        Ruler ruler = new Ruler(reed, new MarkLook(reed, limits, unit), scale, measure);
        ruler.draw(pen, line);
        return line + ruler.below(1);
    }

    /** Where one closes, carried up from its ruler through both drawings; it pauses behind every label. */
    private void closing(Pen pen, Reed reed, Dash dash, double top, List<Item> lettered) {
        reed.mark(Mark.SIDES_CLOSE).ifPresent(close -> pen.shape(Pausing.up(scale.x(close), CAPTION, line(top), lettered, measure),
                Style.line(new MarkLook(reed, limits, unit).role(Mark.SIDES_CLOSE), 1).broken(dash)));
    }

    private static double line(double top) {
        return top + RULER + 4;
    }
}
