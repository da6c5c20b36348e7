package culm.workbench.internal.paint;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Control;

/**
 * What a control shows, kept as a picture: painted once for each change and not for each movement of the pointer over it.
 * In memory, antialiased lines are painted many times quicker than on a window.
 */
public final class Backing {
    private final Control control;
    private final Consumer<GC> painter;
    private Image picture;
    private Point size = new Point(0, 0);
    private int pixels = 1;

    /**
     * Keeps a picture for a control.
     *
     * @param control the control
     * @param painter paints all of it, ground included
     */
    public Backing(Control control, Consumer<GC> painter) {
        this.control = control;
        this.painter = painter;
        control.addListener(SWT.Dispose, e -> forget());
    }

    /** The picture is no longer right. */
    public void forget() {
        if (picture != null) {
            picture.dispose();
            picture = null;
        }
    }

    /**
     * Paints the picture, made anew when it has to be.
     *
     * @param gc where
     */
    public void paint(GC gc) {
        Point now = control.getSize();
        if (now.x <= 0 || now.y <= 0) {
            return;
        }
        int finer = finer();
        if (picture == null || !now.equals(size) || finer != pixels) {
            forget();
            size = now;
            pixels = finer;
            picture = picture(now, finer);
        }
        if (finer == 1) {
            gc.drawImage(picture, 0, 0);
        } else {
            gc.drawImage(picture, 0, 0, now.x * finer, now.y * finer, 0, 0, now.x, now.y);
        }
    }

    private Image picture(Point of, int finer) {
        Image made = new Image(control.getDisplay(), of.x * finer, of.y * finer);
        GC on = new GC(made);
        Transform scaled = new Transform(control.getDisplay(), finer, 0, 0, finer, 0, 0);
        try {
            if (finer != 1) {
                on.setTransform(scaled);
            }
            painter.accept(on);
        } finally {
            scaled.dispose();
            on.dispose();
        }
        return made;
    }

    /** Pixels of the picture for each point of the control. On GTK a picture has one, however fine the screen; elsewhere SWT sees to it. */
    private int finer() {
        return SWT.getPlatform().equals("gtk") ? Math.max(1, control.getMonitor().getZoom() / 100) : 1;
    }
}
