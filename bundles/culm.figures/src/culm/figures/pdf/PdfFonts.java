package culm.figures.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The embedded fonts of one document. */
record PdfFonts(PDType0Font regular, PDType0Font bold) {
    private static final String MISSING = "\uFFFD";

    PDType0Font of(boolean heavy) {
        return heavy ? bold : regular;
    }

    /** The text with everything that the font has no sign for replaced by a sign that says so. */
    String writable(String text, boolean heavy) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> safe.append(has(of(heavy), c) ? Character.toString(c) : MISSING));
        return safe.toString();
    }

    private static boolean has(PDType0Font font, int c) {
        try {
            font.encode(Character.toString(c));
            return true;
        } catch (IllegalArgumentException e) {
            return false; // PDFBox says in this way that the font has no glyph
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
