package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Transform;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.paint.Transformed;

/** What is painted smaller on a surface that is twice as fine lies where it does on any other. */
class TransformedTest extends WorkbenchTest {
    private static final RGB WHITE = new RGB(255, 255, 255);
    private static final RGB BLACK = new RGB(0, 0, 0);

    @Test
    void itIsScaledOnTopOfWhatTheSurfaceDoes() throws Exception {
        ImageData data = ui(() -> {
            Image image = new Image(display(), 100, 100);
            GC gc = new GC(image);
            Transform fine = new Transform(display(), 2, 0, 0, 2, 0, 0);
            try {
                gc.setBackground(display().getSystemColor(SWT.COLOR_WHITE));
                gc.fillRectangle(0, 0, 100, 100);
                gc.setBackground(display().getSystemColor(SWT.COLOR_BLACK));
                gc.setTransform(fine);
                Transformed.paint(gc, t -> {
                    t.translate(10, 5);
                    t.scale(3, 3);
                }, () -> gc.fillRectangle(0, 0, 4, 4));
                gc.fillRectangle(40, 40, 4, 4);
                return image.getImageData();
            } finally {
                fine.dispose();
                gc.dispose();
                image.dispose();
            }
        });
        assertEquals(WHITE, at(data, 17, 12));
        assertEquals(BLACK, at(data, 22, 12));
        assertEquals(BLACK, at(data, 41, 31));
        assertEquals(WHITE, at(data, 46, 36));
        assertEquals(BLACK, at(data, 85, 85));
        assertEquals(WHITE, at(data, 77, 77));
    }

    private static RGB at(ImageData data, int x, int y) {
        return data.palette.getRGB(data.getPixel(x, y));
    }
}
