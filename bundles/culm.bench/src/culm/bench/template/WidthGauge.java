package culm.bench.template;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/**
 * A gauge for widths to print: two lines that run apart. The cane is laid across and moved until its edges touch both lines; the width stands there.
 * One tenth of a millimetre takes {@value #PER_TENTH} mm along the gauge, so that a hundredth can be guessed and a tenth is sure.
 */
public final class WidthGauge {
    private static final double PER_TENTH = 4;
    private static final double LONGEST = 160;
    private static final double HAIR = 0.35;

    private WidthGauge() {
    }

    /**
     * Draws it into a pen; the lines' inner edges are not meant, but their middles.
     * @param x     left end, mm
     * @param y     middle between the lines, mm
     * @param from  smallest width, mm
     * @param to    largest width, mm; drawn in rows where it is too long for one
     * @return where it ends below, mm
     */
    static double draw(Pen pen, double x, double y, double from, double to) {
        double step = LONGEST / PER_TENTH / 10;
        double at = y;
        for (double low = from; low < to - 1e-9; low += step) {
            double high = Math.min(to, low + step);
            row(pen, x, at + high / 2, low, high);
            at += high + 9;
        }
        return at;
    }

    private static void row(Pen pen, double x, double y, double low, double high) {
        double u = Drawing.UNITS_PER_MM;
        double length = (high - low) * 10 * PER_TENTH;
        pen.group(Part.RULER, "width gauge " + Numbers.fixed(low, 1) + " to " + Numbers.fixed(high, 1) + " mm", p -> {
            p.shape(Path.line(x * u, (y - low / 2) * u, (x + length) * u, (y - high / 2) * u), Style.line(Role.INK, HAIR));
            p.shape(Path.line(x * u, (y + low / 2) * u, (x + length) * u, (y + high / 2) * u), Style.line(Role.INK, HAIR));
            PathBuilder ticks = Path.start();
            int tenths = (int) Math.round((high - low) * 10);
            for (int i = 0; i <= tenths; i++) {
                double width = low + i / 10.0;
                double at = (x + i * PER_TENTH) * u;
                double longer = i % 5 == 0 ? 2.6 : 1.4;
                ticks.move(at, (y + width / 2) * u).line(at, (y + width / 2 + longer) * u);
                ticks.move(at, (y - width / 2) * u).line(at, (y - width / 2 - longer) * u);
                if (i % 5 == 0) {
                    p.text(Numbers.fixed(width, 1), at, (y + width / 2 + 6) * u, Anchor.MIDDLE, Size.SMALL, Role.INK);
                }
            }
            p.shape(ticks.path(), Style.line(Role.INK, HAIR));
        });
    }
}
