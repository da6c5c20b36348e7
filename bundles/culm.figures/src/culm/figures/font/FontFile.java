package culm.figures.font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The two font files that are shipped: DejaVu Sans 2.37, regular and bold; free, see the licence beside them. */
public enum FontFile {
    REGULAR("DejaVuSans.ttf"), BOLD("DejaVuSans-Bold.ttf");

    /** What an SVG asks for: the shipped font first, then fonts that are not wider. */
    public static final String FAMILIES = "'DejaVu Sans', Verdana, 'Noto Sans', 'Segoe UI', Helvetica, Arial, sans-serif";
    private final String file;

    FontFile(String file) {
        this.file = file;
    }

    /** The file's bytes; the caller closes it. */
    public InputStream open() {
        InputStream in = FontFile.class.getResourceAsStream(file);
        if (in == null) {
            throw new IllegalStateException("The font " + file + " is missing from this installation.");
        }
        return in;
    }

    /** The font, ready to be asked; the caller closes it. */
    public TrueTypeFont parse() {
        try (InputStream in = open()) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException e) {
            throw new UncheckedIOException("The font " + file + " cannot be read.", e);
        }
    }
}
