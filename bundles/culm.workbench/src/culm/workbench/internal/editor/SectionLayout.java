package culm.workbench.internal.editor;

import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Mark;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.TextMeasure;
import culm.figures.reed.CrossSection;
import culm.figures.reed.Reed;

/**
 * How the section is laid out on its canvas.
 *
 * @param width of the canvas, drawing units
 * @param height of the canvas, drawing units
 * @param at the height it is cut at, mm; empty for where the sides close
 * @param unit in what lengths are written
 */
record SectionLayout(double width, double height, OptionalDouble at, Lengths unit) {
    /** Draws a reed so. */
    Drawing draw(Reed reed, TextMeasure measure) {
        return CrossSection.draw(reed, height(reed), width, height, measure, unit);
    }

    /** {@return the height of the section} */
    double height(Reed of) {
        Assessment a = of.assessment();
        return at.orElseGet(() -> a.sidesCloseAt().orElseGet(() -> of.mark(Mark.WRAP_TOP).orElse(0)));
    }
}
