package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.IntStream;

import org.eclipse.swt.graphics.ImageData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window opens, on the perspective for designing. */
class OpensTest extends WorkbenchTest {

    @Test
    void oneWindowStands() throws Exception {
        assertEquals(1, ui(() -> workbench().getWorkbenchWindowCount()));
        assertTrue(ui(() -> window().getShell().isVisible()));
    }

    @Test
    void aPictureOfTheScreenIsKeptWhenATestFails(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("deeper").resolve("picture.png");
        settle();
        WorkbenchExtension.keepPicture(display(), file);
        ImageData picture = new ImageData(file.toString());
        assertEquals(ui(() -> display().getBounds().width * display().getPrimaryMonitor().getZoom() / 100), picture.width);
        long colours = IntStream.range(0, picture.width).map(x -> picture.getPixel(x, 40)).distinct().count();
        assertTrue(colours > 3, "the window can be seen on it");
    }

    @Test
    void onThePerspectiveForDesigning() throws Exception {
        assertEquals("culm.workbench.design", ui(() -> page().getPerspective().getId()));
    }
}
