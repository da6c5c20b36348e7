package culm.workbench.internal.paint;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
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
        if (picture == null || !now.equals(size)) {
            forget();
            size = now;
            picture = new Image(control.getDisplay(), now.x, now.y);
            GC on = new GC(picture);
            try {
                painter.accept(on);
            } finally {
                on.dispose();
            }
        }
        gc.drawImage(picture, 0, 0);
    }
}
