package culm.workbench.internal.paint;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Pattern;
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
    private Pattern pattern;
    private Point size = new Point(0, 0);
    private int finer;

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
        control.addListener(SWT.Resize, e -> finer = 0);
        control.addListener(SWT.ZoomChanged, e -> finer = 0);
    }

    /** The picture is no longer right. */
    public void forget() {
        if (picture != null) {
            pattern.dispose();
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
        if (finer == 0) {
            forget();
            finer = finer();
        }
        if (picture == null || !now.equals(size)) {
            forget();
            size = now;
            picture = picture(now);
            pattern = new Pattern(control.getDisplay(), picture);
        }
        // As a pattern: drawing an image copies all of it each time, on some systems pixel by pixel.
        gc.setBackgroundPattern(pattern);
        scaled(gc, 1f / finer, () -> gc.fillRectangle(0, 0, now.x * finer, now.y * finer));
        gc.setBackgroundPattern(null);
    }

    private Image picture(Point of) {
        Image made = new Image(control.getDisplay(), of.x * finer, of.y * finer);
        GC on = new GC(made);
        try {
            scaled(on, finer, () -> painter.accept(on));
        } finally {
            on.dispose();
        }
        return made;
    }

    private void scaled(GC gc, float by, Runnable paint) {
        if (by == 1) {
            paint.run();
            return;
        }
        Transform transform = new Transform(gc.getDevice(), by, 0, 0, by, 0, 0);
        try {
            gc.setTransform(transform);
            paint.run();
            gc.setTransform(null);
        } finally {
            transform.dispose();
        }
    }

    /** Pixels of the picture for each point of the control. On GTK a picture has one, however fine the screen; elsewhere SWT sees to it. */
    private int finer() {
        return SWT.getPlatform().equals("gtk") ? Math.max(1, control.getMonitor().getZoom() / 100) : 1;
    }
}
