package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.junit.jupiter.api.Test;

import culm.figures.Palette;
import culm.figures.Rgb;
import culm.figures.Role;

/** Light and dark. */
class ThemeTest extends StudioTest {

    @Test
    void theDrawingsFollowTheTheme() throws Exception {
        open("trial-12.reed");
        assertEquals(colour(Palette.LIGHT), corner());
        command("culm.window.dark");
        try {
            settle();
            assertEquals(colour(Palette.DARK), corner());
            assertEquals(colour(Palette.DARK), ui(() -> figure("Reed").getParent().getBackground().getRGB()));
        } finally {
            command("culm.window.light");
        }
        settle();
        assertEquals(colour(Palette.LIGHT), corner());
    }

    private static RGB colour(Palette palette) {
        Rgb rgb = palette.of(Role.PAPER);
        return new RGB(rgb.red(), rgb.green(), rgb.blue());
    }

    /** The colour in the corner of the reed's canvas as it is painted. */
    private RGB corner() throws Exception {
        return ui(() -> {
            Canvas canvas = figure("Reed");
            Image image = new Image(display(), canvas.getSize().x, canvas.getSize().y);
            GC gc = new GC(image);
            try {
                canvas.print(gc);
                ImageData data = image.getImageData();
                return data.palette.getRGB(data.getPixel(1, 1));
            } finally {
                gc.dispose();
                image.dispose();
            }
        });
    }
}
