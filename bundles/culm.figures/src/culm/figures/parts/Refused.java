package culm.figures.parts;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Lines;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.TextMeasure;

/** What is shown where a part cannot be drawn: its caption and the reason. */
final class Refused {
    private Refused() {
    }

    static Drawing draw(String caption, String why, double width, double height, TextMeasure measure) {
        Pen pen = new Pen();
        pen.text(caption, 12, 16, Anchor.START, Size.BODY, Role.INK);
        double line = 44;
        for (String text : Lines.of(why, measure, Size.BODY, false, width - 24)) {
            pen.text(text, 12, line, Anchor.START, Size.BODY, Role.DOES_NOT);
            line += Lines.height(measure, Size.BODY);
        }
        return pen.drawing(width, Math.max(height, line), caption, why);
    }
}
