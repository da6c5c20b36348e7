package culm.figures.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.font.FontFile;

/**
 * Writes drawings as a PDF, one page each, 1 drawing unit = 1/96 inch = 0.75 pt. The shipped font is embedded as far as it is used; viewers are
 * asked not to scale when printing. The same drawings give the same bytes.
 */
public final class PdfWriter {
    /** Points to a drawing unit. */
    static final double POINTS = 72.0 / 96;
    /** A PDF's id is made from this instead of the clock. */
    private static final long DOCUMENT = 0x43756c6dL;

    private PdfWriter() {
    }

    /**
     * Writes the pages; the stream stays open.
     * @throws IllegalArgumentException when there is no page
     */
    public static void write(List<Drawing> pages, Palette palette, OutputStream out) throws IOException {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("a document needs a page");
        }
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(DOCUMENT);
            document.getDocumentInformation().setTitle(pages.get(0).title());
            document.getDocumentInformation().setProducer("Culm");
            PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            PdfFonts fonts = new PdfFonts(load(document, FontFile.REGULAR), load(document, FontFile.BOLD));
            for (Drawing drawing : pages) {
                PDPage page = new PDPage(new PDRectangle((float) (drawing.width() * POINTS), (float) (drawing.height() * POINTS)));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    new PdfPainter(content, drawing.height(), palette, fonts).paint(drawing);
                }
            }
            document.save(out);
        }
    }

    private static PDType0Font load(PDDocument document, FontFile file) throws IOException {
        try (InputStream in = file.open()) {
            return PDType0Font.load(document, in, true);
        }
    }
}
