package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Transform;
import org.junit.jupiter.api.Test;

import culm.figures.Size;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.look.Look;

/** Text that was laid out before is painted as the toolkit paints it anew, pixel by pixel. */
class KeptTextsTest extends StudioTest {
    private static final List<String> TEXTS = List.of("Sides just closed.", "AV Te To r. \u201cTy\u201d", "\u00b1 0.35\u2009mm", "\u22120.12", "  two  spaces  ", "0.489\u2009cm\u00b3");
    private static final int LEFT = 7;
    private static final int TOP = 5;

    private Look look() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        return ui(() -> session(editor).workshop().look());
    }

    /** The pixels of a picture that something is painted on. */
    private byte[] pixels(float scale, float turn, Consumer<GC> painter) {
        Image picture = new Image(display(), new ImageData(420, 420, 24, new PaletteData(0xff0000, 0xff00, 0xff)));
        GC gc = new GC(picture);
        Transform transform = new Transform(display(), scale, 0, 0, scale, 150, 150);
        transform.rotate(turn);
        try {
            gc.setAdvanced(true);
            gc.setBackground(new Color(251, 250, 247));
            gc.fillRectangle(picture.getBounds());
            gc.setForeground(new Color(23, 80, 120));
            gc.setTransform(transform);
            painter.accept(gc);
            return picture.getImageData().data;
        } finally {
            gc.dispose();
            transform.dispose();
            picture.dispose();
        }
    }

    private void same(Look look, float scale, float turn, String text, Size size, boolean bold) {
        byte[] anew = pixels(scale, turn, gc -> {
            gc.setFont(look.font(size, bold ? SWT.BOLD : SWT.NORMAL));
            gc.drawString(text, LEFT, TOP, true);
        });
        for (int time = 0; time < 2; time++) {
            assertArrayEquals(anew, pixels(scale, turn, gc -> look.write(gc, text, size, bold, LEFT, TOP)), text + ", " + size + ", " + bold + ", " + scale + ", " + turn);
        }
    }

    @Test
    void keptTextIsPaintedAsAnewInEachSizeAndTurned() throws Exception {
        Look look = look();
        ui(() -> {
            for (Size size : Size.values()) {
                for (String text : TEXTS) {
                    same(look, 1, 0, text, size, false);
                    same(look, 2, 0, text, size, true);
                    same(look, 1, -90, text, size, false);
                }
            }
            return null;
        });
    }

    @Test
    void noTextAndMoreTextsThanAreKeptArePaintedToo() throws Exception {
        Look look = look();
        ui(() -> {
            same(look, 1, 0, "", Size.BODY, false);
            IntStream.range(0, 700).forEach(i -> pixels(1, 0, gc -> look.write(gc, "text " + i, Size.BODY, false, LEFT, TOP)));
            same(look, 1, 0, "text 0", Size.BODY, false);
            same(look, 1, 0, "text 699", Size.BODY, false);
            return null;
        });
    }

    @Test
    void anotherThreadPaintsTheSame() throws Exception {
        Look look = look();
        byte[] here = ui(() -> pixels(1, 0, gc -> look.write(gc, "finished 70.1", Size.BODY, false, LEFT, TOP)));
        byte[] there = CompletableFuture.supplyAsync(() -> pixels(1, 0, gc -> look.write(gc, "finished 70.1", Size.BODY, false, LEFT, TOP)), look.besides()).join();
        assertArrayEquals(here, there);
        assertFalse(Arrays.equals(here, ui(() -> pixels(1, 0, gc -> look.write(gc, "finished 70.2", Size.BODY, false, LEFT, TOP)))), "nothing is painted");
    }
}
