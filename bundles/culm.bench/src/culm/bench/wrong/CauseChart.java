package culm.bench.wrong;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/** The causes of an explanation as bars: how far each would have to be off by itself, in units of its own give or take. */
public final class CauseChart {
    private static final double TOP = 44;
    private static final double ROW = 24;
    private static final double LEFT = 14;
    private static final String BEYOND = " ▸";

    private CauseChart() {
    }

    /** Draws it. @param explanation one with causes; @param width drawing units, at least 300 */
    public static Drawing draw(Explanation explanation, double width, TextMeasure measure) {
        double w = Math.max(300, width);
        double names = Math.min(0.42 * w, explanation.causes().stream().mapToDouble(c -> measure.width(c.words(), Size.BODY, true)).max().orElse(0));
        double most = explanation.causes().stream().mapToDouble(Cause::units).max().orElse(1);
        double first = explanation.causes().get(0).units();
        double end = Math.min(most, 6 * first);
        Axis x = new Axis(0, Math.max(end, WhatWentWrong.ALIKE * first), LEFT + names + 12, w - 62);
        // What lies beyond the axis has an arrow behind its number; all numbers end before it, so that their digits stay in line.
        double numbers = w - 10 - (most > x.to() ? measure.width(BEYOND, Size.SMALL, false) : 0);
        double bottom = TOP + ROW * explanation.causes().size();
        Pen pen = new Pen();
        pen.text("How far off each would have to be by itself, in units of its own give or take", LEFT, 16, Anchor.START, Size.BODY, Role.INK);
        double alike = x.at(WhatWentWrong.ALIKE * first);
        pen.group(Part.AXIS, "about equally well", p -> {
            p.shape(Path.line(alike, TOP - 6, alike, bottom), Style.line(Role.QUIET, 1).broken(Dash.DASHED));
            boolean right = alike + measure.width("about equally well", Size.SMALL, false) < w - 8;
            p.text(right ? "up to here about equally well" : "about equally well", alike + (right ? 4 : -4), TOP - 8,
                    right && alike + measure.width("up to here about equally well", Size.SMALL, false) < w - 8 ? Anchor.START : Anchor.END, Size.SMALL, Role.QUIET);
        });
        pen.group(Part.SERIES, "causes", p -> {
            for (int i = 0; i < explanation.causes().size(); i++) {
                Cause cause = explanation.causes().get(i);
                double y = TOP + ROW * (i + 0.5);
                boolean equal = i < explanation.equal();
                p.add(new culm.figures.Text(cause.words(), LEFT, y + 4.5, Anchor.START, Size.BODY, equal, equal ? Role.INK : Role.QUIET, 0));
                double to = x.at(Math.min(cause.units(), x.to()));
                p.line(x.start(), y, to, y, equal ? Role.THREAD : Role.RULE, 9);
                p.text(Numbers.fixed(cause.units(), 1), numbers, y + 4, Anchor.END, Size.SMALL, Role.QUIET);
                if (cause.units() > x.to()) {
                    p.text(BEYOND, numbers, y + 4, Anchor.START, Size.SMALL, Role.QUIET);
                }
            }
        });
        return pen.drawing(w, bottom + 8, "Causes", String.join("; ", explanation.causes().stream().map(c -> c.words() + " " + Numbers.fixed(c.units(), 1)).toList()) + ".");
    }
}
