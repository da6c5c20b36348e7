package culm.figures.png;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

import culm.figures.font.FontFile;

/** Outlines of text in the shipped font, so that no font of the machine is asked. */
final class Glyphs implements Closeable {
    private final TrueTypeFont regular = FontFile.REGULAR.parse();
    private final TrueTypeFont bold = FontFile.BOLD.parse();

    /** Outline of a text that starts at the origin, y downwards, and its width. */
    record Outline(Path2D path, double width) {
    }

    Outline outline(String text, double size, boolean heavy) {
        TrueTypeFont font = heavy ? bold : regular;
        try {
            double scale = size / font.getUnitsPerEm();
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            Path2D all = new Path2D.Double();
            double x = 0;
            for (int c : text.codePoints().toArray()) {
                int id = glyphs.getGlyphId(c);
                GlyphData glyph = font.getGlyph().getGlyph(id);
                if (glyph != null) {
                    all.append(glyph.getPath().getPathIterator(new AffineTransform(scale, 0, 0, -scale, x, 0)), false);
                }
                x += font.getAdvanceWidth(id) * scale;
            }
            return new Outline(all, x);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try (regular; bold) {
            // both are closed by the end of this statement
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
