package culm.workbench.internal.paint;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Transform;

/** Paints something larger or smaller and elsewhere, on top of what the surface does already: on a screen at 200 % it makes all twice as large. */
public final class Scaled {
    private Scaled() {
    }

    /**
     * Paints it; afterwards the surface is as before.
     *
     * @param gc the surface
     * @param x where its left end comes, in the surface's own units
     * @param y where its top comes
     * @param scale how much larger it becomes
     * @param paint paints it from 0, 0
     */
    public static void paint(GC gc, double x, double y, double scale, Runnable paint) {
        gc.setAdvanced(true);
        Transform before = new Transform(gc.getDevice());
        Transform now = new Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(now);
            now.translate((float) x, (float) y);
            now.scale((float) scale, (float) scale);
            gc.setTransform(now);
            paint.run();
            gc.setTransform(before);
        } finally {
            now.dispose();
            before.dispose();
        }
    }
}
