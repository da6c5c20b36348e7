package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.junit.jupiter.api.Test;

import culm.figures.Drawing;
import culm.figures.paper.Paper;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.export.FigureFile;
import culm.workbench.internal.export.FigureFile.Format;
import culm.workbench.internal.graphs.Figure;

/** Every drawing of the editor as a file, a picture and a table. */
class ExportTest extends StudioTest {

    @Test
    void everyDrawingIsWrittenInEveryFormat() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        List<Figure> figures = ui(() -> editor.figures().stream().filter(f -> f.onPaper(2).isPresent()).toList());
        assertTrue(figures.size() >= 4, "reed, section, graphs and gouge can be written");
        for (Figure figure : figures) {
            Drawing drawing = ui(() -> figure.onPaper(2)).orElseThrow();
            String svg = new String(FigureFile.bytes(drawing, figure.title(), Format.SVG, Paper.A4), StandardCharsets.UTF_8);
            assertTrue(svg.contains("<svg") && svg.contains("<path"), figure.title());
            byte[] pdf = FigureFile.bytes(drawing, figure.title(), Format.PDF, Paper.A4);
            assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
            byte[] png = FigureFile.bytes(drawing, figure.title(), Format.PNG, Paper.A4);
            ImageData data = new ImageData(new ByteArrayInputStream(png));
            assertEquals(drawing.width() / 96 * 300, data.width, 2, figure.title());
        }
    }

    @Test
    void theReedIsAsLongOnPaperAsAskedFor() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        Figure reed = ui(editor::figures).stream().filter(f -> f.title().equals("Reed")).findFirst().orElseThrow();
        double once = ui(() -> reed.onPaper(1)).orElseThrow().width();
        double twice = ui(() -> reed.onPaper(2)).orElseThrow().width();
        assertEquals(72 * Drawing.UNITS_PER_MM, twice - once, 1e-6);
    }

    @Test
    void aFileThatWasThereIsKeptAsABackup() throws Exception {
        Path file = folder.resolve("drawing.svg");
        Files.writeString(file, "before");
        FigureFile.write(file, "after".getBytes(StandardCharsets.UTF_8));
        assertEquals("after", Files.readString(file));
        assertEquals("before", Files.readString(folder.resolve("drawing.svg.bak")));
    }

    @Test
    void aDrawingIsCopiedAsPictureAndAsTable() throws Exception {
        open("trial-12.reed");
        ui(() -> figure("Reed").setFocus());
        command("culm.design.table");
        String table = ui(() -> {
            Clipboard clipboard = new Clipboard(display());
            try {
                return (String) clipboard.getContents(TextTransfer.getInstance());
            } finally {
                clipboard.dispose();
            }
        });
        assertTrue(table.startsWith("height mm\tleft side open by mm"), table);
        assertTrue(table.lines().count() > 10);
        command("culm.design.picture");
        ImageData picture = ui(() -> {
            Clipboard clipboard = new Clipboard(display());
            try {
                return (ImageData) clipboard.getContents(ImageTransfer.getInstance());
            } finally {
                clipboard.dispose();
            }
        });
        assertTrue(picture.width > 400 && picture.height > 300);
    }
}
