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
import culm.figures.Palette;
import culm.figures.Rgb;
import culm.figures.svg.SvgWriter;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.paint.Backing;
import culm.workbench.internal.paint.SwtColors;
import culm.workbench.internal.widgets.DrawnCanvas;

/** A picture that is painted by another thread is the picture that the display's thread paints. */
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
            backing = new Backing(canvas, all("here", RED));
        });
    }

    @AfterEach
    void closeShell() throws Exception {
        ui(() -> shell.dispose());
    }

    /** A ground with something on it. */
    private Consumer<GC> all(String name, Rgb ground) {
        return gc -> {
            painted.add(name + (Thread.currentThread() == display().getThread() ? "" : " besides"));
            gc.setBackground(SwtColors.of(ground));
            gc.fillRectangle(0, 0, 40, 20);
            gc.setBackground(SwtColors.of(BLUE));
            gc.fillRectangle(10, 0, 10, 20);
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
    void itIsPaintedOnceByTheOtherThread() throws Exception {
        ui(() -> backing.besides(OTHER, all("green", GREEN)));
        List<RGB> expected = List.of(rgb(GREEN), rgb(BLUE), rgb(GREEN));
        assertEquals(expected, shown());
        assertEquals(expected, shown());
        assertEquals(List.of("green besides"), painted);
    }

    @Test
    void whatWasBegunForSomethingElseIsNotShown() throws Exception {
        ui(() -> {
            backing.besides(OTHER, all("green", GREEN));
            backing.forget();
        });
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("green besides", "here"), painted);
    }

    @Test
    void whatTheOtherThreadCannotPaintIsPaintedHere() throws Exception {
        ui(() -> backing.besides(OTHER, gc -> {
            throw new IllegalStateException("on purpose");
        }));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("here"), painted);
    }

    @Test
    void aCanvasThatGoesWhileItIsPaintedHarmsNothing() throws Exception {
        ui(() -> {
            backing.besides(OTHER, all("green", GREEN));
            shell.dispose();
        });
        assertEquals(List.of("green besides"), painted);
    }

    @Test
    void aCanvasThatShrinksAndGrowsIsPaintedAnewAndNotBeyondItsEdge() throws Exception {
        RGB blank = rgb(new Rgb(255, 255, 255));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        ui(() -> canvas.setSize(20, 20));
        ui(() -> backing.besides(OTHER, all("green", GREEN)));
        assertEquals(List.of(rgb(GREEN), rgb(BLUE), blank), shown());
        ui(() -> canvas.setSize(60, 30));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        ui(() -> canvas.setSize(40, 30));
        assertEquals(List.of(rgb(RED), rgb(BLUE), rgb(RED)), shown());
        assertEquals(List.of("here", "green besides", "here", "here"), painted);
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

    @Test
    void whatWasLaidOutBesidesIsWhatIsLaidOutHere() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        ui(() -> session(editor).gesture().preview(Inputs.TIE_LENGTH, 71.3, "fold"));
        shown(editor);
        List<String> besides = ui(() -> List.of(written("Reed"), written("Section")));
        ui(() -> {
            editor.showPage(DesignEditor.Page.GRAPHS); // while the reed cannot be seen nothing of it is laid out ahead
            session(editor).gesture().preview(Inputs.TIE_LENGTH, 72.6, "fold");
        });
        shown(editor);
        ui(() -> session(editor).gesture().preview(Inputs.TIE_LENGTH, 71.3, "fold"));
        shown(editor);
        ui(() -> editor.showPage(DesignEditor.Page.REED));
        assertEquals(besides, ui(() -> List.of(written("Reed"), written("Section"))));
        ui(() -> session(editor).gesture().giveBack());
    }

    private String written(String name) {
        return SvgWriter.write(((DrawnCanvas) figure(name)).onScreen().orElseThrow(), Palette.LIGHT);
    }

    private byte[] picture(String name) throws Exception {
        return ui(() -> picture(figure(name)).data);
    }
}
