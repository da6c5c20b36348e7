package culm.figures.reed;

import java.util.List;

import culm.blank.Mark;
import culm.figures.Part;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;
import culm.geometry.GeometryException;

/** The cut through the middle, seen from the narrow side: the staple's wall, the cane's thickness, the layers of thread. */
final class CutView {
    private final Reed reed;
    private final Outlines outlines;

    CutView(Reed reed, Outlines outlines) {
        this.reed = reed;
        this.outlines = outlines;
    }

    /** Half of the height it needs, mm. */
    double half() {
        if (!reed.drawable()) {
            return 3;
        }
        double bottom = reed.outside(0).halfNarrow() + (reed.mark(Mark.CORK_TOP).isPresent() ? WideSide.CORK : 0);
        double wrap = outlines.underThreadCut(Math.max(0, reed.caneEnd())) + 2 * reed.thread();
        return Math.max(Math.max(bottom, outlines.underThreadCut(reed.wrapTop()) + 2 * reed.thread()), wrap);
    }

    void draw(Pen pen, Lane lane) {
        List<double[]> outside = outlines.points(0, reed.stapleTop(), z -> reed.outside(z).halfNarrow());
        pen.group(Part.CORK, "cork", p -> reed.mark(Mark.CORK_TOP).ifPresent(top -> {
            double half = Math.max(reed.outside(0).halfNarrow(), reed.outside(top).halfNarrow()) + WideSide.CORK;
            pair(p, lane, outlines.points(0, top, z -> half), outlines.points(0, top, z -> reed.outside(z).halfNarrow()), Role.CORK, Role.CORK_EDGE);
        }));
        pen.group(Part.STAPLE, "staple", p -> pair(p, lane, outside, bore(), Role.BRASS, Role.BRASS_EDGE));
        double from = Math.max(0, reed.caneEnd());
        if (from < reed.fold()) {
            pen.group(Part.CANE, "cane", p -> pair(p, lane, outlines.points(from, reed.fold(), outlines::caneOutside),
                    outlines.points(from, reed.fold(), outlines::caneInside), Role.CANE, Role.CANE_EDGE));
        }
        pen.group(Part.THREAD, "thread", p -> new Wrap(reed, lane).cut(p, outlines::underThreadCut));
    }

    /** The bore, or the outside again where the wall does not fit (the findings say so). */
    private List<double[]> bore() {
        try {
            return outlines.points(0, reed.stapleTop(), z -> reed.bore(z).halfNarrow());
        } catch (GeometryException e) {
            return outlines.points(0, reed.stapleTop(), z -> 0);
        }
    }

    private static void pair(Pen p, Lane lane, List<double[]> outer, List<double[]> inner, Role fill, Role edge) {
        Style style = Style.fill(fill).edged(edge, Style.THIN);
        p.shape(lane.between(outer, inner), style);
        p.shape(lane.between(Lane.mirrored(outer), Lane.mirrored(inner)), style);
    }
}
