package culm.workbench.internal.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.paper.Paper;
import culm.figures.paper.Sheet;
import culm.figures.pdf.PdfWriter;
import culm.figures.png.PngWriter;
import culm.figures.svg.SvgWriter;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;

/** Writes a drawing into a file. */
public final class FigureFile {
    private static final double DPI = 300;

    /** The formats. */
    public enum Format {
        /** Vectors for the screen and for drawing programs. */
        SVG("svg"),
        /** A sheet of paper with a check ruler. */
        PDF("pdf"),
        /** Pixels, 300 to the inch. */
        PNG("png");

        private final String ending;

        Format(String ending) {
            this.ending = ending;
        }

        /** {@return what the file's name ends in, without a dot} */
        public String ending() {
            return ending;
        }
    }

    private FigureFile() {
    }

    /**
     * The bytes of a drawing's file.
     *
     * @param drawing the drawing
     * @param title what the sheet is called
     * @param format the format
     * @param paper the paper, for PDF
     * @return the bytes
     * @throws IOException when a format cannot hold the drawing
     */
    public static byte[] bytes(Drawing drawing, String title, Format format, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        switch (format) {
            case SVG -> out.write(SvgWriter.write(drawing, Palette.PRINT).getBytes(StandardCharsets.UTF_8));
            case PDF -> PdfWriter.write(List.of(Sheet.of(drawing, title, paper)), Palette.PRINT, out);
            case PNG -> PngWriter.write(drawing, Palette.PRINT, DPI, out);
        }
        return out.toByteArray();
    }

    /**
     * Writes a drawing.
     *
     * @param file where to; what was there is kept as a backup
     * @param bytes its bytes
     * @throws FileProblemException when it cannot be written
     */
    public static void write(Path file, byte[] bytes) throws FileProblemException {
        SafeFile.overwrite(file, bytes);
    }
}
