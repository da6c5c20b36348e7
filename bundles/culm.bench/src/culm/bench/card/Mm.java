package culm.bench.card;

import java.util.List;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Clip;
import culm.figures.Drawing;
import culm.figures.Lines;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/** A pen that is led in mm on paper; type keeps its own size. */
final class Mm {
    private static final double U = Drawing.UNITS_PER_MM;
    private final Pen pen;
    private final TextMeasure measure;

    Mm(Pen pen, TextMeasure measure) {
        this.pen = pen;
        this.measure = measure;
    }

    Pen pen() {
        return pen;
    }

    TextMeasure measure() {
        return measure;
    }

    Mm inside(Pen other) {
        return new Mm(other, measure);
    }

    void text(String text, double x, double y, Anchor anchor, Size size, Role role) {
        pen.text(text, x * U, y * U, anchor, size, role);
    }

    void bold(String text, double x, double y, Anchor anchor, Size size, Role role) {
        pen.bold(text, x * U, y * U, anchor, size, role);
    }

    void line(double x1, double y1, double x2, double y2, Role role, double width) {
        pen.line(x1 * U, y1 * U, x2 * U, y2 * U, role, width);
    }

    void box(double x, double y, double width, double height, Style style) {
        pen.shape(Path.box(new Box(x * U, y * U, width * U, height * U)), style);
    }

    void round(double x, double y, double width, double height, double r, Style style) {
        pen.shape(Path.box(new Box(x * U, y * U, width * U, height * U), r * U), style);
    }

    void circle(double x, double y, double r, Style style) {
        pen.shape(Path.circle(x * U, y * U, r * U), style);
    }

    double width(String text, Size size, boolean bold) {
        return measure.width(text, size, bold) / U;
    }

    /** Height of one line of type, mm. */
    static double lineHeight(Size size) {
        return 1.28 * size.units() / U;
    }

    /** Words in lines no wider than {@code width}; a word that is wider stands alone. */
    List<String> wrap(String text, double width, Size size, boolean bold) {
        return Lines.of(text, measure, size, bold, width * U);
    }

    /** Writes words in lines from a first baseline down; returns the last baseline. */
    double paragraph(String text, double x, double y, double width, Size size, boolean bold, Role role) {
        double at = y - lineHeight(size);
        for (String line : wrap(text, width, size, bold)) {
            at += lineHeight(size);
            if (bold) {
                bold(line, x, at, Anchor.START, size, role);
            } else {
                text(line, x, at, Anchor.START, size, role);
            }
        }
        return at;
    }

    /** As much of a text as fits, with an ellipsis where it was cut. */
    String cut(String text, double width, Size size, boolean bold) {
        return Clip.to(text, measure, size, bold, width * U);
    }
}
