package culm.figures.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;

import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Gallery;
import culm.figures.Palette;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;

/** PNG: size, resolution, colours. */
class PngTest {
    @Test
    void sizeAndResolutionAreThose() throws Exception {
        Drawing drawing = Gallery.all().get("section-46.0");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PngWriter.write(drawing, Palette.LIGHT, 192, out);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        assertEquals(2 * drawing.width(), image.getWidth(), 1);
        assertEquals(2 * drawing.height(), image.getHeight(), 1);
        byte[] bytes = out.toByteArray();
        int at = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf("pHYs");
        assertTrue(at > 0, "no resolution");
        assertEquals(192 / 0.0254, ByteBuffer.wrap(bytes, at + 4, 4).getInt(), 1);
    }

    @Test
    void everyCornerIsPaperAndEveryMaterialIsThere() {
        for (Palette palette : new Palette[] {Palette.LIGHT, Palette.DARK}) {
            BufferedImage image = PngWriter.image(Gallery.all().get("section-46.0"), palette, 100);
            int paper = Integer.parseInt(palette.of(Role.PAPER).hex().substring(1), 16);
            assertEquals(paper, image.getRGB(0, 0) & 0xffffff);
            assertEquals(paper, image.getRGB(image.getWidth() - 1, image.getHeight() - 1) & 0xffffff);
            for (Role role : new Role[] {Role.THREAD, Role.CANE, Role.BRASS}) {
                int colour = Integer.parseInt(palette.of(role).hex().substring(1), 16);
                int found = 0;
                for (int rgb : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
                    found += (rgb & 0xffffff) == colour ? 1 : 0;
                }
                assertTrue(found > 200, role + ": " + found + " pixels");
            }
        }
    }

    @Test
    void clipsEndWithTheirGroup() {
        Drawing drawing = new Pen().group(culm.figures.Part.PAGE, "", java.util.Optional.of(new Box(0, 0, 5, 5)),
                p -> p.shape(Path.box(new Box(0, 0, 20, 20)), Style.fill(Role.INK))).shape(Path.box(new Box(10, 10, 5, 5)), Style.fill(Role.THREAD)).drawing(20, 20, "", "");
        BufferedImage image = PngWriter.image(drawing, Palette.LIGHT, 96);
        assertEquals(0x2b2f33, image.getRGB(2, 2) & 0xffffff);
        assertEquals(0xfbfaf7, image.getRGB(7, 7) & 0xffffff);
        assertEquals(0x3568a3, image.getRGB(12, 12) & 0xffffff);
    }

    @Test
    void anImageTooLargeIsRefused() {
        Drawing drawing = Gallery.all().get("section-46.0");
        assertThrows(IllegalArgumentException.class, () -> PngWriter.image(drawing, Palette.LIGHT, 96 * 1000));
        assertThrows(IllegalArgumentException.class, () -> PngWriter.image(drawing, Palette.LIGHT, 0));
    }
}
