package culm.figures.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDPageContentStream;

import culm.figures.PathSink;

/** Hands the pieces of a path to PDFBox; remembers the first failure, because a sink cannot throw it. */
final class PdfPath implements PathSink {
    private final PDPageContentStream content;
    private final double right;
    private final double up;
    private IOException failed;

    /** @param right added to x; @param up what y is taken from; drawing units */
    PdfPath(PDPageContentStream content, double right, double up) {
        this.content = content;
        this.right = right;
        this.up = up;
    }

    private interface Step {
        void run() throws IOException;
    }

    private void step(Step step) {
        if (failed == null) {
            try {
                step.run();
            } catch (IOException e) {
                failed = e;
            }
        }
    }

    void rethrow() throws IOException {
        if (failed != null) {
            throw failed;
        }
    }

    private float px(double x) {
        return (float) ((x + right) * PdfWriter.POINTS);
    }

    private float py(double y) {
        return (float) ((up - y) * PdfWriter.POINTS);
    }

    @Override
    public void move(double x, double y) {
        step(() -> content.moveTo(px(x), py(y)));
    }

    @Override
    public void line(double x, double y) {
        step(() -> content.lineTo(px(x), py(y)));
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
        step(() -> content.curveTo(px(x1), py(y1), px(x2), py(y2), px(x), py(y)));
    }

    @Override
    public void close() {
        step(content::closePath);
    }
}
