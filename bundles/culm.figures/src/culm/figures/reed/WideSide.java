package culm.figures.reed;

import java.util.List;

import culm.blank.Inputs;
import culm.blank.Mark;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;

/** The reed seen from its wide side: staple, cork, cane with its curved thread turns, ears. */
final class WideSide {
    /** Thickness of a cork; not measured and not in the model, only drawn. */
    static final double CORK = 0.8;
    private final Reed reed;
    private final Outlines outlines;

    WideSide(Reed reed, Outlines outlines) {
        this.reed = reed;
        this.outlines = outlines;
    }

    /** Half of the height it needs, mm. */
    double half() {
        double cane = outlines.caneWide().stream().mapToDouble(p -> p[1]).max().orElse(0);
        double ears = Double.isNaN(reed.number(Inputs.EARS_WIDTH)) ? 0 : outlines.caneWideAt(reed.fold()) + reed.number(Inputs.EARS_WIDTH);
        double thread = reed.drawable() ? outlines.underThreadWide(reed.wrapTop()) + 2 * reed.thread() : 0;
        return Math.max(Math.max(cane, ears), Math.max(thread, reed.drawable() ? cork(0) : 3));
    }

    /** Half of the cork as drawn, mm. */
    double cork(double atLeast) {
        return Math.max(atLeast, Math.max(reed.outside(0).halfWide(), reed.outside(reed.stapleTop()).halfWide())) + CORK;
    }

    void draw(Pen pen, Lane lane) {
        List<double[]> staple = outlines.points(0, reed.stapleTop(), z -> reed.outside(z).halfWide());
        pen.group(Part.STAPLE, "staple", p -> p.shape(lane.both(staple), Style.fill(Role.BRASS).edged(Role.BRASS_EDGE, 1)));
        reed.mark(Mark.CORK_TOP).ifPresent(top -> pen.group(Part.CORK, "cork", p -> {
            double y = lane.y(cork(0));
            p.shape(Path.box(new Box(lane.x(0), y, lane.x(top) - lane.x(0), 2 * (lane.middle() - y)), 3),
                    Style.fill(Role.CORK).edged(Role.CORK_EDGE, 1));
            p.shape(lane.both(outlines.points(0, top, z -> reed.outside(z).halfWide())), Style.tint(Role.BRASS, 0.5));
            p.shape(lane.lines(outlines.points(0, top, z -> reed.outside(z).halfWide())), Style.line(Role.CORK_EDGE, Style.THIN).broken(Dash.DOTTED));
        }));
        pen.group(Part.CANE, "cane", p -> cane(p, lane));
        pen.group(Part.THREAD, "thread", p -> new Wrap(reed, lane).turns(p, outlines::underThreadWide));
    }

    private void cane(Pen p, Lane lane) {
        List<double[]> cane = outlines.caneWide();
        if (cane.size() < 2) {
            return;
        }
        ears(p, lane);
        p.shape(lane.both(cane), Style.fill(Role.CANE).edged(Role.CANE_EDGE, 1));
        double hiddenFrom = Math.max(0, reed.caneEnd());
        if (hiddenFrom < reed.stapleTop()) {
            List<double[]> hidden = outlines.points(hiddenFrom, reed.stapleTop(), z -> reed.outside(z).halfWide());
            p.shape(lane.lines(hidden), Style.line(Role.BRASS_EDGE, Style.THIN).broken(Dash.DOTTED));
            double end = hidden.get(hidden.size() - 1)[1];
            p.shape(Path.line(lane.x(reed.stapleTop()), lane.y(end), lane.x(reed.stapleTop()), lane.y(-end)),
                    Style.line(Role.BRASS_EDGE, Style.THIN).broken(Dash.DOTTED));
        }
        double finished = reed.mark(Mark.FINISHED).orElse(reed.fold());
        if (finished < reed.fold() && finished > cane.get(0)[0]) {
            List<double[]> off = outlines.points(finished, reed.fold(), outlines::caneWideAt);
            p.shape(lane.both(off), Style.tint(Role.PAPER, 0.6));
            p.shape(lane.both(off), Style.line(Role.CANE_EDGE, 1));
        }
    }

    /** Extra width at the fold, clipped after tying: only its outline. */
    private void ears(Pen p, Lane lane) {
        double width = reed.number(Inputs.EARS_WIDTH);
        double length = reed.number(Inputs.EARS_LENGTH);
        if (!(width > 0 && length > 0) || length > reed.fold() - reed.stapleTop()) {
            return;
        }
        List<double[]> ears = outlines.points(reed.fold() - length, reed.fold(),
                z -> outlines.caneWideAt(z) + width * Math.min(1, Math.max(0, (z - reed.fold() + length) / length) * 3));
        p.shape(lane.both(ears), Style.tint(Role.CANE, 0.35).edged(Role.CANE_EDGE, Style.THIN).broken(Dash.DASHED));
    }
}
