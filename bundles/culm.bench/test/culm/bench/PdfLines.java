package culm.bench;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads the straight lines and the boxes of a page back out of its PDF, in mm from the lower left corner. */
public final class PdfLines extends PDFGraphicsStreamEngine {
    public static final double POINTS_PER_MM = 72 / 25.4;
    private static final double LEVEL = 1e-3;
    private final List<double[]> segments = new ArrayList<>();
    private final List<double[]> boxes = new ArrayList<>();
    private final List<List<double[]>> polygons = new ArrayList<>();
    private List<double[]> current = new ArrayList<>();

    private PdfLines(PDPage page) {
        super(page);
    }

    public static PdfLines of(PDPage page) throws IOException {
        PdfLines lines = new PdfLines(page);
        lines.processPage(page);
        return lines;
    }

    /** (x1, y1, x2, y2), x1 not above x2. */
    public List<double[]> horizontal() {
        return segments.stream().filter(s -> Math.abs(s[1] - s[3]) < LEVEL && Math.abs(s[0] - s[2]) > LEVEL)
                .map(s -> s[0] < s[2] ? s : new double[] {s[2], s[3], s[0], s[1]}).toList();
    }

    /** (x1, y1, x2, y2). */
    public List<double[]> vertical() {
        return segments.stream().filter(s -> Math.abs(s[0] - s[2]) < LEVEL && Math.abs(s[1] - s[3]) > LEVEL).toList();
    }

    /** Lines that are neither level nor upright and longer than 20 mm, from left to right. */
    public List<double[]> slanted() {
        return segments.stream().filter(s -> Math.abs(s[1] - s[3]) > LEVEL && Math.abs(s[0] - s[2]) > 20)
                .map(s -> s[0] < s[2] ? s : new double[] {s[2], s[3], s[0], s[1]}).toList();
    }

    /** Closed level rectangles: x, y, width, height. */
    public List<double[]> boxes() {
        return boxes;
    }

    /** Every closed figure with its corners. */
    public List<List<double[]>> polygons() {
        return polygons;
    }

    @Override
    public void moveTo(float x, float y) {
        current = new ArrayList<>(List.of(mm(x, y)));
    }

    @Override
    public void lineTo(float x, float y) {
        double[] from = current.get(current.size() - 1);
        double[] to = mm(x, y);
        segments.add(new double[] {from[0], from[1], to[0], to[1]});
        current.add(to);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        current.add(mm(x3, y3));
    }

    @Override
    public void closePath() {
        polygons.add(List.copyOf(current));
        double left = current.stream().mapToDouble(p -> p[0]).min().orElse(0);
        double right = current.stream().mapToDouble(p -> p[0]).max().orElse(0);
        double low = current.stream().mapToDouble(p -> p[1]).min().orElse(0);
        double high = current.stream().mapToDouble(p -> p[1]).max().orElse(0);
        if (current.size() == 4 || current.size() == 5) {
            boxes.add(new double[] {left, low, right - left, high - low});
        }
    }

    private static double[] mm(double x, double y) {
        return new double[] {x / POINTS_PER_MM, y / POINTS_PER_MM};
    }

    @Override
    public Point2D getCurrentPoint() {
        if (current.isEmpty()) {
            return new Point2D.Float();
        }
        double[] last = current.get(current.size() - 1);
        return new Point2D.Double(last[0] * POINTS_PER_MM, last[1] * POINTS_PER_MM);
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        current = new ArrayList<>(List.of(mm(a.getX(), a.getY()), mm(b.getX(), b.getY()), mm(c.getX(), c.getY()), mm(d.getX(), d.getY())));
        closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("a card has no pictures");
    }

    @Override
    public void clip(int rule) {
        // nothing to collect
    }

    @Override
    public void endPath() {
        // nothing to collect
    }

    @Override
    public void strokePath() {
        // nothing to collect
    }

    @Override
    public void fillPath(int rule) {
        // nothing to collect
    }

    @Override
    public void fillAndStrokePath(int rule) {
        // nothing to collect
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("a card has no shadings");
    }
}
