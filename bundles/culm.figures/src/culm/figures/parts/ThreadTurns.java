package culm.figures.parts;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/** Ten turns of a thread side by side, as seen and in the cut, true to scale, with what one turn takes and how thick the thread is. */
public final class ThreadTurns {
    private static final int TURNS = 10;
    private static final double MARGIN = 24;
    private static final double MOST = 420;
    private static final double SEEN = 64;
    private static final double ROW = 18;

    private ThreadTurns() {
    }

    /**
     * Draws them.
     *
     * @param blank has the thread
     * @param width at least 120, drawing units
     * @param unit  in what lengths are written
     */
    public static Drawing draw(Blank blank, double width, TextMeasure measure, Lengths unit) {
        double w = Math.max(120, width);
        double thick = blank.number(Inputs.THREAD_DIAMETER);
        double pitch = blank.number(Inputs.THREAD_PITCH);
        double perMm = Math.min(MOST, w - 2 * MARGIN) / ((TURNS - 1) * pitch + Math.max(pitch, thick));
        double r = thick / 2 * perMm;
        double first = MARGIN + Math.max(pitch, thick) / 2 * perMm;
        double seen = 32;
        double line = seen + SEEN + 14 + 2 * r;
        Pen pen = new Pen();
        String caption = "Ten turns side by side, " + unit.sign();
        String scale = "drawn " + Numbers.fixed(perMm / Drawing.UNITS_PER_MM, 1) + " : 1";
        pen.text(caption, 12, 16, Anchor.START, Size.BODY, Role.INK);
        double said = Math.max(12 + measure.width(caption, Size.BODY, false) + 16 + measure.width(scale, Size.SMALL, false), end(perMm, pitch, thick));
        if (said <= w - 12) {
            pen.text(scale, said, 16, Anchor.END, Size.SMALL, Role.QUIET);
        }
        pen.group(Part.THREAD, "turns", p -> {
            Style thread = Style.fill(Role.THREAD).edged(Role.THREAD_EDGE, Style.THIN);
            PathBuilder cut = Path.start();
            for (int i = 0; i < TURNS; i++) {
                double x = first + i * pitch * perMm;
                p.shape(Path.box(new Box(x - r, seen, 2 * r, SEEN)), thread);
                cut.circle(x, line - r, r);
            }
            p.shape(cut.path(), thread);
        });
        pen.line(MARGIN - 8, line, end(perMm, pitch, thick), line, Role.BRASS_EDGE, 1.4);
        Dimensions lines = new Dimensions(measure);
        double last = first + (TURNS - 1) * pitch * perMm;
        pen.group(Part.DIMENSIONS, "dimensions", p -> {
            lines.across(p, first, first + pitch * perMm, line + ROW, "turn to turn " + unit.fixed(pitch, 2));
            lines.across(p, first - pitch / 2 * perMm, last + pitch / 2 * perMm, line + 2 * ROW, "ten turns " + unit.fixed(TURNS * pitch, 1));
            lines.across(p, first - r, first + r, line + 3 * ROW, "thread " + unit.fixed(thick, 2));
        });
        return pen.drawing(w, line + 4 * ROW, "Thread", "Ten turns of " + unit.text(pitch, 2) + " each, of a thread of " + unit.text(thick, 2) + ".");
    }

    /** Where the line under the turns ends, and with it the drawing. */
    private static double end(double perMm, double pitch, double thick) {
        return MARGIN + ((TURNS - 1) * pitch + Math.max(pitch, thick)) * perMm + 8;
    }
}
