package culm.figures.paper;

import java.util.Locale;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;

/** One drawing on one sheet, at its own size, with a title above and a check ruler below. Upright where it fits, else on its side. */
public final class Sheet {
    private static final double MARGIN = Paper.MARGIN_MM * Drawing.UNITS_PER_MM;
    private static final double HEAD = 34;
    private static final double FOOT = CheckRuler.HEIGHT + 12;

    private Sheet() {
    }

    /**
     * The page as a drawing of the paper's size.
     * @throws IllegalArgumentException when the drawing is larger than the sheet; nothing is scaled down silently
     */
    public static Drawing of(Drawing drawing, String title, Paper paper) {
        boolean wide = !fits(drawing, paper, false);
        if (wide && !fits(drawing, paper, true)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "The drawing measures %.0f by %.0f mm and does not fit on %s.",
                    drawing.width() / Drawing.UNITS_PER_MM, drawing.height() / Drawing.UNITS_PER_MM, paper.label()));
        }
        double width = paper.width(wide);
        double height = paper.height(wide);
        Pen pen = new Pen();
        pen.bold(title, MARGIN, MARGIN + 16, Anchor.START, Size.HEADING, Role.INK);
        pen.add(drawing.at((width - drawing.width()) / 2, MARGIN + HEAD));
        CheckRuler.draw(pen, MARGIN, height - MARGIN - 20);
        return pen.drawing(width, height, title, drawing.description());
    }

    private static boolean fits(Drawing drawing, Paper paper, boolean wide) {
        return drawing.width() <= paper.width(wide) - MARGIN && drawing.height() <= paper.height(wide) - 2 * MARGIN - HEAD - FOOT;
    }
}
