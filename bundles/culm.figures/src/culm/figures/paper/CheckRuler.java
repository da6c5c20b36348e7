package culm.figures.paper;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/** A line of 100 mm to lay a caliper on, and what to do when it is not. */
public final class CheckRuler {
    /** Its length, mm. */
    public static final double LENGTH_MM = 100;
    /** What is written beside it. */
    public static final String SENTENCE = "This line must measure 100 mm; if it does not, print again at 100 %, not fitted to the page.";
    /** Height it takes, drawing units. */
    public static final double HEIGHT = 36;

    private CheckRuler() {
    }

    /** Draws it. @param x left end; @param y the line's height, drawing units */
    public static void draw(Pen pen, double x, double y) {
        double mm = Drawing.UNITS_PER_MM;
        pen.group(Part.PRINT_CHECK, "100 mm", p -> {
            p.line(x, y, x + LENGTH_MM * mm, y, Role.INK, 0.8);
            PathBuilder ticks = Path.start();
            for (int i = 0; i <= LENGTH_MM; i++) {
                double length = i % 10 == 0 ? 9 : i % 5 == 0 ? 6 : 3.5;
                ticks.move(x + i * mm, y).line(x + i * mm, y - length);
            }
            p.shape(ticks.path(), Style.line(Role.INK, 0.5));
            p.text("0", x, y - 12, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            p.text("50", x + 50 * mm, y - 12, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            p.text("100 mm", x + LENGTH_MM * mm, y - 12, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            p.text(SENTENCE, x, y + 16, Anchor.START, Size.SMALL, Role.INK);
        });
    }
}
