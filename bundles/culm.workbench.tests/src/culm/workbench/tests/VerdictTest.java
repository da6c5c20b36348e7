package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.Test;

import culm.figures.Palette;
import culm.figures.Rgb;
import culm.figures.Role;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;

/** What stands under a design's name: the verdict over the whole width, and while it is being computed quiet words and no sign, since nothing is known yet. */
class VerdictTest extends StudioTest {
    /** Where the name ends and the verdict begins, points from the top. */
    private static final int NAME = 32;

    @Test
    void nothingWarnsBeforeAnythingIsKnown() throws Exception {
        CountDownLatch computed = new CountDownLatch(1);
        ui(() -> Workshop.of(workbench()).worker().execute(() -> await(computed)));
        DesignEditor editor;
        try {
            editor = ui(() -> (DesignEditor) page().openEditor(new FileInput(folder.resolve("trial-8-overwrapped.reed")), DesignEditor.ID));
            atRest();
            assertTrue(ui(() -> session(editor).pending()));
            double quiet = light(Palette.LIGHT.of(Role.QUIET));
            assertTrue(ui(this::darkestOfTheVerdict) >= quiet - 2, "no sign and no strong ink");
            assertEquals(0, ui(this::redOfTheVerdict));
        } finally {
            computed.countDown();
        }
        shown(editor);
        atRest();
        assertTrue(ui(this::redOfTheVerdict) > 20, "now it is known that it does not fit");
    }

    @Test
    void aLongVerdictHasTheWholeWidthBelowTheLinks() throws Exception {
        shown(open("trial-8-overwrapped.reed"));
        atRest();
        ui(() -> {
            Canvas strip = strip();
            List<Control> beside = new ArrayList<>(List.of(strip.getParent().getChildren()));
            assertEquals(strip.getParent().getSize().x, strip.getSize().x);
            assertEquals(strip, beside.remove(beside.size() - 1), "the links lie above it");
            assertEquals(DesignEditor.Page.values().length, beside.size());
            for (Control link : beside) {
                assertTrue(link.getBounds().y + link.getSize().y <= NAME + 2, "no link lies over the verdict");
                assertTrue(link.getBounds().x + link.getSize().x <= strip.getSize().x);
            }
        });
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private double darkestOfTheVerdict() {
        ImageData verdict = verdict();
        double least = 255;
        for (int y = 0; y < verdict.height; y++) {
            for (int x = 0; x < verdict.width; x++) {
                RGB at = verdict.palette.getRGB(verdict.getPixel(x, y));
                least = Math.min(least, light(new Rgb(at.red, at.green, at.blue)));
            }
        }
        return least;
    }

    private int redOfTheVerdict() {
        ImageData verdict = verdict();
        int count = 0;
        for (int y = 0; y < verdict.height; y++) {
            for (int x = 0; x < verdict.width; x++) {
                RGB at = verdict.palette.getRGB(verdict.getPixel(x, y));
                count += at.red - at.blue > 60 ? 1 : 0;
            }
        }
        return count;
    }

    private static double light(Rgb c) {
        return 0.299 * c.red() + 0.587 * c.green() + 0.114 * c.blue();
    }

    private Canvas strip() {
        return find(window().getShell(), Canvas.class).stream().filter(c -> c.getClass().getSimpleName().equals("HeaderStrip") && c.isVisible()).findFirst().orElseThrow();
    }

    /** The header below the name as it is painted. */
    private ImageData verdict() {
        Canvas strip = strip();
        Image image = new Image(display(), strip.getSize().x, strip.getSize().y - NAME);
        GC gc = new GC(strip);
        try {
            gc.copyArea(image, 0, NAME);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
