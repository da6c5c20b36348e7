package culm.workbench.internal.paint;

import java.util.function.Consumer;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Transform;

/** Paints something moved, turned or scaled, on top of what the surface does already: on a screen at 200 % it makes all twice as large. */
public final class Transformed {
    private Transformed() {
    }

    /**
     * Paints it; afterwards the surface is as before.
     *
     * @param gc the surface
     * @param change moves, turns or scales, in the surface's own units
     * @param paint paints it
     */
    public static void paint(GC gc, Consumer<Transform> change, Runnable paint) {
        gc.setAdvanced(true);
        Transform before = new Transform(gc.getDevice());
        Transform now = new Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(now);
            change.accept(now);
            gc.setTransform(now);
            paint.run();
            gc.setTransform(before);
        } finally {
            now.dispose();
            before.dispose();
        }
    }
}
