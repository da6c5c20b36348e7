package culm.figures.font;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

import culm.figures.Size;
import culm.figures.TextMeasure;

/** Room that text takes in the shipped font, from its own metrics; without kerning. Immutable; loading takes some tens of milliseconds. */
public final class ShippedFont implements TextMeasure {
    private static final int KNOWN = 0x3000;
    private final float[] regular;
    private final float[] bold;
    private final double ascent;
    private final double descent;

    private ShippedFont(TrueTypeFont plain, TrueTypeFont heavy) throws IOException {
        regular = advances(plain);
        bold = advances(heavy);
        double em = plain.getUnitsPerEm();
        ascent = plain.getHorizontalHeader().getAscender() / em;
        descent = -plain.getHorizontalHeader().getDescender() / em;
    }

    /** Reads the metrics. */
    public static ShippedFont load() {
        try (TrueTypeFont plain = FontFile.REGULAR.parse(); TrueTypeFont heavy = FontFile.BOLD.parse()) {
            return new ShippedFont(plain, heavy);
        } catch (IOException e) {
            throw new UncheckedIOException("The shipped font cannot be read.", e);
        }
    }

    private static float[] advances(TrueTypeFont font) throws IOException {
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        float em = font.getUnitsPerEm();
        float[] widths = new float[KNOWN];
        for (int c = 0; c < KNOWN; c++) {
            widths[c] = font.getAdvanceWidth(glyphs.getGlyphId(c)) / em;
        }
        return widths;
    }

    @Override
    public double width(String text, Size size, boolean heavy) {
        float[] widths = heavy ? bold : regular;
        double em = 0;
        for (int i = 0; i < text.length();) {
            int c = text.codePointAt(i);
            em += c < KNOWN ? widths[c] : 1;
            i += Character.charCount(c);
        }
        return em * size.units();
    }

    @Override
    public double ascent(Size size) {
        return ascent * size.units();
    }

    @Override
    public double descent(Size size) {
        return descent * size.units();
    }
}
