package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.figures.Rgb;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.paint.Backing;
import culm.workbench.internal.paint.SwtColors;

/** A picture whose lowest layer is painted by another thread is the picture that one thread paints. */
class BackingTest extends StudioTest {
    private static final Rgb RED = new Rgb(200, 0, 0);
    private static final Rgb GREEN = new Rgb(0, 200, 0);
    private static final Rgb BLUE = new Rgb(0, 0, 200);
    private static final Executor OTHER = work -> new Thread(work, "other").start();
    private final List<String> painted = Collections.synchronizedList(new ArrayList<>());
    private Shell shell;
    private Canvas canvas;
    private Backing backing;

    @BeforeEach
    void openShell() throws Exception {
        ui(() -> {
            shell = new Shell(display());
            canvas = new Canvas(shell, SWT.NONE);
            canvas.setSize(40, 20);
            backing = new Backing(canvas, layer("ground", 0, 40, RED), layer("rest", 10, 10, BLUE));
        });
    }

    @AfterEach
    void closeShell() throws Exception {
        ui(() -> shell.dispose());
    }

    private Consumer<GC> layer(String name, int from, int width, Rgb colour) {
        return gc -> {
            painted.add(name + (Thread.currentThread() == display().getThread() ? "" : " besides"));
            gc.setBackground(SwtColors.of(colour));
            gc.fillRectangle(from, 0, width, 20);
        };
    }

    /** Colours at three places of what is shown. */
    private List<RGB> shown() throws Exception {
        return ui(() -> {
            Image image = new Image(display(), 40, 20);
            GC gc = new GC(image);
            try {
                backing.paint(gc);
                ImageData data = image.getImageData();
                return List.of(5, 15, 30).stream().map(x -> data.palette.getRGB(data.getPixel(x, 10))).toList();
            } finally {
                gc.dispose();
                image.dispose();
            }
        });
    }

    private static RGB rgb(Rgb of) {
        return new RGB(of.red(), of.green(), of.blue());
    }

    @Test
    void theLowestLayerIsPaintedOnceByTheOtherThread() throws Exception {
        ui(() -> backing.besides(OTHER, layer("ground", 0, 40, GREEN)));
        List<RGB> expected = List.of(rgb(GREEN), rgb(BLUE), rgb(GREEN));
        assertEquals(expected, shown());
        assertEquals(expected, shown());
        assertEquals(List.of("ground besides", "rest"), painted);
    }

    @Test
    void whatWasBegunForSomethingElseIsNotShown() throws Exception {
        ui(() -> {
            backing.besides(OTHER, layer("ground", 0, 40, GREEN));
            backing.forget();
        });
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("ground besides", "ground", "rest"), painted);
    }

    @Test
    void whatTheOtherThreadCannotPaintIsPaintedHere() throws Exception {
        ui(() -> backing.besides(OTHER, gc -> {
            throw new IllegalStateException("on purpose");
        }));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("ground", "rest"), painted);
    }

    @Test
    void aCanvasThatGoesWhileItIsPaintedHarmsNothing() throws Exception {
        ui(() -> {
            backing.besides(OTHER, layer("ground", 0, 40, GREEN));
            shell.dispose();
        });
        assertEquals(List.of("ground besides"), painted);
    }

    @Test
    void aCanvasThatShrinksAndGrowsIsPaintedAnewAndNotBeyondItsEdge() throws Exception {
        RGB blank = rgb(new Rgb(255, 255, 255));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        ui(() -> canvas.setSize(20, 20));
        ui(() -> backing.besides(OTHER, layer("ground", 0, 40, GREEN)));
        assertEquals(List.of(rgb(GREEN), rgb(BLUE), blank), shown());
        ui(() -> canvas.setSize(60, 30));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        ui(() -> canvas.setSize(40, 30));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("ground", "rest", "ground besides", "rest", "ground", "rest", "ground", "rest"), painted);
    }

    @Test
    void theReedIsTheSameHoweverItIsPainted() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        ui(() -> session(editor).change(e -> e.setValue(Inputs.TIE_LENGTH, 71.4), ""));
        shown(editor);
        for (String name : List.of("Reed", "Section")) {
            byte[] besides = picture(name);
            ui(() -> figure(name).notifyListeners(SWT.Resize, new Event())); // all anew, on this thread
            assertArrayEquals(besides, picture(name), name);
        }
    }

    private byte[] picture(String name) throws Exception {
        return ui(() -> picture(figure(name)).data);
    }
}
