package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.junit.jupiter.api.Test;

import culm.figures.Size;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.SwtMeasure;

/** Text takes the room that the screen gives it, though it is measured word by word and numbers digit by digit. */
class MeasureTest extends StudioTest {
    private static final List<String> TEXTS = List.of("", " ", "a", "Sides just closed.", "To move the closing by one turn, change the tie length by 0.9 mm: shorter closes sooner.",
            "AV Te To r. \u201cTy\u201d", "  two  spaces  ", "\u00b1 0.35\u2009mm", "46.5", "1,234.5", "\u22120.12", "5 up, 52 down", "sides close 46.1", "0.489\u2009cm\u00b3", "100%", "7.0:1");

    private Look look() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        return ui(() -> session(editor).workshop().look());
    }

    @Test
    void aTextIsAsWideAsTheScreenMakesIt() throws Exception {
        Look look = look();
        for (Size size : Size.values()) {
            for (int style : new int[] { SWT.NORMAL, SWT.BOLD }) {
                for (String text : TEXTS) {
                    int whole = ui(() -> {
                        GC gc = new GC(display());
                        gc.setFont(look.font(size, style));
                        int width = text.isEmpty() ? 0 : gc.stringExtent(text).x;
                        gc.dispose();
                        return width;
                    });
                    assertEquals(whole, ui(() -> look.measure().width(text, size, style == SWT.BOLD)), text + ", " + size + ", " + style);
                }
            }
        }
    }

    @Test
    void anotherThreadKnowsWhatWasMeasuredAndIsRefusedTheRest() throws Exception {
        SwtMeasure measure = look().measure();
        double width = ui(() -> measure.width("knotted 12.5", Size.BODY, false));
        double numbers = ui(() -> measure.width("0123456789", Size.BODY, false) + measure.ascent(Size.BODY));
        assertEquals(width, CompletableFuture.supplyAsync(() -> measure.width("knotted 12.5", Size.BODY, false)).join());
        assertEquals(numbers, CompletableFuture.supplyAsync(() -> measure.width("9876543210", Size.BODY, false) + measure.ascent(Size.BODY)).join());
        CompletableFuture<Double> unknown = CompletableFuture.supplyAsync(() -> measure.width("neverseen", Size.BODY, false));
        assertEquals(IllegalStateException.class, assertThrows(CompletionException.class, unknown::join).getCause().getClass());
    }
}
