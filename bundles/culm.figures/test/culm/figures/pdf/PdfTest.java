package culm.figures.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import culm.blank.Limits;
import culm.figures.Blanks;
import culm.figures.Drawing;
import culm.figures.Gallery;
import culm.figures.Palette;
import culm.figures.font.ShippedFont;
import culm.figures.paper.CheckRuler;
import culm.figures.paper.Paper;
import culm.figures.paper.Sheet;
import culm.figures.reed.LengthStack;
import culm.figures.reed.Reed;

/** PDF pages read back: lengths true to 0.1 mm, text is text, the font is embedded. */
class PdfTest {
    private static final double MM = 25.4 / 72;

    private static byte[] write(List<Drawing> pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(pages, Palette.PRINT, out);
        return out.toByteArray();
    }

    private static Drawing page(Paper paper) {
        Reed reed = Reed.of(Blanks.assessed(Blanks.example()));
        return Sheet.of(LengthStack.draw(reed, Limits.STANDARD, 1, ShippedFont.load()), "Length stack", paper);
    }

    /** Level straight lines of a page as {length, left, height}, in mm from its lower left corner. */
    private static List<double[]> levelLines(PDPage page) throws IOException {
        List<double[]> lines = new ArrayList<>();
        new PDFGraphicsStreamEngine(page) {
            private Point2D at = new Point2D.Double();

            @Override
            public void moveTo(float x, float y) {
                at = new Point2D.Double(x, y);
            }

            @Override
            public void lineTo(float x, float y) {
                if (Math.abs(y - at.getY()) < 1e-3) {
                    lines.add(new double[] {Math.abs(x - at.getX()) * MM, Math.min(x, at.getX()) * MM, y * MM});
                }
                at = new Point2D.Double(x, y);
            }

            @Override
            public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
                at = new Point2D.Double(x3, y3);
            }

            @Override
            public Point2D getCurrentPoint() {
                return at;
            }

            @Override
            public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
                at = p0;
            }

            @Override
            public void drawImage(PDImage image) {
                throw new AssertionError("no images in these drawings");
            }

            @Override
            public void clip(int windingRule) {
                at = new Point2D.Double();
            }

            @Override
            public void closePath() {
                at = new Point2D.Double();
            }

            @Override
            public void endPath() {
                at = new Point2D.Double();
            }

            @Override
            public void strokePath() {
                at = new Point2D.Double();
            }

            @Override
            public void fillPath(int windingRule) {
                at = new Point2D.Double();
            }

            @Override
            public void fillAndStrokePath(int windingRule) {
                at = new Point2D.Double();
            }

            @Override
            public void shadingFill(COSName name) {
                throw new AssertionError("no shadings in these drawings");
            }
        }.processPage(page);
        return lines;
    }

    @Test
    void theCheckRulerMeasures100mmAndTheReedIsLifeSize() throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument document = Loader.loadPDF(write(List.of(page(paper))))) {
                PDPage page = document.getPage(0);
                assertEquals(paper == Paper.A4 ? 210 : 215.9, page.getMediaBox().getWidth() * MM, 0.01);
                assertEquals(paper == Paper.A4 ? 297 : 279.4, page.getMediaBox().getHeight() * MM, 0.01);
                List<double[]> lines = levelLines(page);
                assertTrue(lines.stream().anyMatch(l -> Math.abs(l[0] - 100) < 0.01), "no line of 100 mm");
                assertTrue(lines.stream().anyMatch(l -> Math.abs(l[0] - 72) < 0.01), "no line of the tie length");
                assertTrue(lines.stream().anyMatch(l -> Math.abs(l[0] - 46.0488965) < 0.01), "no line up to the closing");
                assertTrue(new PDFTextStripper().getText(document).contains(CheckRuler.SENTENCE));
            }
        }
    }

    @Test
    void textIsTextAndTheFontIsEmbedded() throws IOException {
        byte[] bytes = write(List.of(page(Paper.A4)));
        assertTrue(bytes.length < 120_000, bytes.length + " bytes");
        try (PDDocument document = Loader.loadPDF(bytes)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("sides close 46.0") && text.contains("\u00b1"), text);
            int fonts = 0;
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertTrue(font.isEmbedded(), font.getName());
                assertTrue(font.getName().contains("DejaVuSans"), font.getName());
                fonts++;
            }
            assertEquals(2, fonts);
            PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
            assertEquals("None", preferences.getPrintScaling());
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() throws IOException {
        assertArrayEquals(write(List.of(page(Paper.A4))), write(List.of(page(Paper.A4))));
    }

    @Test
    void everyFigureBecomesAPage() throws IOException {
        List<Drawing> all = new ArrayList<>(Gallery.all().values());
        byte[] bytes = write(all);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(all.size(), document.getNumberOfPages());
        }
        assertTrue(!new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).contains("NaN"));
    }

    @Test
    void lettersTheFontDoesNotHaveAreMarkedNotFatal() throws IOException {
        Drawing drawing = new culm.figures.Pen().text("\u4e2d \ud83d\ude00 Zo\u00eb", 10, 20, culm.figures.Anchor.START, culm.figures.Size.BODY, culm.figures.Role.INK)
                .drawing(200, 40, "names", "");
        try (PDDocument document = Loader.loadPDF(write(List.of(drawing)))) {
            assertTrue(new PDFTextStripper().getText(document).contains("Zo\u00eb"));
        }
    }

    @Test
    void aDrawingThatDoesNotFitIsRefusedNotShrunk() {
        Drawing large = new culm.figures.Pen().drawing(400 * Drawing.UNITS_PER_MM, 100, "large", "");
        String why = org.junit.jupiter.api.Assertions.assertThrows(IllegalArgumentException.class, () -> Sheet.of(large, "large", Paper.A4)).getMessage();
        assertEquals("The drawing measures 400 by 26 mm and does not fit on A4.", why);
        Drawing wide = new culm.figures.Pen().drawing(260 * Drawing.UNITS_PER_MM, 100, "wide", "");
        assertEquals(297 * Drawing.UNITS_PER_MM, Sheet.of(wide, "wide", Paper.A4).width(), 1e-9);
    }
}
