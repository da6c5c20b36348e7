package culm.figures.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Handle;
import culm.figures.Item;
import culm.figures.Palette;
import culm.figures.Path;
import culm.figures.Rgb;
import culm.figures.Role;
import culm.figures.Shape;
import culm.figures.Style;
import culm.figures.Text;

/** Paints one drawing on one page. Coordinates are turned into points with y upwards here, so that nothing but text needs a matrix. */
final class PdfPainter {
    private static final int ROUND = 1;
    private final PDPageContentStream content;
    private final double height;
    private final Palette palette;
    private final PdfFonts fonts;

    PdfPainter(PDPageContentStream content, double height, Palette palette, PdfFonts fonts) {
        this.content = content;
        this.height = height;
        this.palette = palette;
        this.fonts = fonts;
    }

    void paint(Drawing drawing) throws IOException {
        content.setLineCapStyle(ROUND);
        content.setLineJoinStyle(ROUND);
        fillWith(Role.PAPER);
        path(Path.box(new Box(0, 0, drawing.width(), drawing.height())), 0, 0);
        content.fill();
        for (Item item : drawing.items()) {
            item(item, 0, 0);
        }
    }

    private void item(Item item, double dx, double dy) throws IOException {
        if (item instanceof Shape s) {
            shape(s, dx, dy);
        } else if (item instanceof Handle h) {
            shape(h.shape(), dx, dy);
        } else if (item instanceof Text t) {
            text(t, dx, dy);
        } else if (item instanceof Group g) {
            content.saveGraphicsState();
            if (g.clip().isPresent()) {
                path(Path.box(g.clip().get()), dx + g.dx(), dy + g.dy());
                content.clip();
            }
            for (Item inner : g.items()) {
                item(inner, dx + g.dx(), dy + g.dy());
            }
            content.restoreGraphicsState();
        }
    }

    private void shape(Shape shape, double dx, double dy) throws IOException {
        Style s = shape.style();
        if (s.fill().isPresent()) {
            fillWith(s.fill().get());
            opacity(s.fillOpacity());
            path(shape.path(), dx, dy);
            content.fillEvenOdd();
            opacity(1);
        }
        if (s.stroke().isPresent()) {
            Rgb c = palette.of(s.stroke().get());
            content.setStrokingColor(c.red() / 255f, c.green() / 255f, c.blue() / 255f);
            content.setLineWidth((float) (s.width() * PdfWriter.POINTS));
            content.setLineDashPattern(dash(s), 0);
            content.setLineCapStyle(dash(s).length == 0 ? ROUND : 0);
            path(shape.path(), dx, dy);
            content.stroke();
        }
    }

    private double opacityNow = 1;

    private void opacity(double value) throws IOException {
        if (value != opacityNow) {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant((float) value);
            content.setGraphicsStateParameters(state);
            opacityNow = value;
        }
    }

    private static float[] dash(Style s) {
        double[] lengths = s.dash().lengths();
        float[] points = new float[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            points[i] = (float) (lengths[i] * PdfWriter.POINTS);
        }
        return points;
    }

    private void fillWith(Role role) throws IOException {
        Rgb c = palette.of(role);
        content.setNonStrokingColor(c.red() / 255f, c.green() / 255f, c.blue() / 255f);
    }

    private void path(Path path, double dx, double dy) throws IOException {
        PdfPath sink = new PdfPath(content, dx, height - dy);
        path.walk(sink);
        sink.rethrow();
    }

    private void text(Text t, double dx, double dy) throws IOException {
        PDType0Font font = fonts.of(t.bold());
        String text = fonts.writable(t.text(), t.bold());
        if (text.isEmpty()) {
            return;
        }
        double points = t.size().units() * PdfWriter.POINTS;
        double width = font.getStringWidth(text) / 1000 * points;
        double back = t.anchor() == Anchor.START ? 0 : t.anchor() == Anchor.END ? width : width / 2;
        double angle = -Math.toRadians(t.turn());
        double x = (t.x() + dx) * PdfWriter.POINTS - back * Math.cos(angle);
        double y = (height - t.y() - dy) * PdfWriter.POINTS - back * Math.sin(angle);
        fillWith(t.role());
        content.beginText();
        content.setFont(font, (float) points);
        content.setTextMatrix(Matrix.getRotateInstance(angle, (float) x, (float) y));
        content.showText(text);
        content.endText();
    }
}
