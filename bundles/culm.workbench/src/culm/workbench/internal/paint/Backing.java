package culm.workbench.internal.paint;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Pattern;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Control;

/**
 * What a control shows, kept as a picture: painted once for each change and not for each movement of the pointer over it.
 * In this program's own memory, antialiased lines are painted many times quicker than on a window or on a picture that the display server keeps.
 * The picture may be painted by another thread; nothing else touches it until that is done.
 */
public final class Backing {
    private static final boolean GTK = SWT.getPlatform().equals("gtk");
    private final Control control;
    private final Consumer<GC> painter;
    private Image picture;
    private Pattern pattern;
    private Point size = new Point(0, 0);
    private Point room = new Point(0, 0);
    private int finer;
    private boolean unsure;
    private boolean right;
    private CompletableFuture<Void> begun;

    /**
     * Keeps a picture for a control.
     *
     * @param control the control
     * @param painter paints all of it, ground included
     */
    public Backing(Control control, Consumer<GC> painter) {
        this.control = control;
        this.painter = painter;
        control.addListener(SWT.Dispose, e -> dispose());
        control.addListener(SWT.Resize, e -> unsure = true);
        control.addListener(SWT.ZoomChanged, e -> unsure = true);
    }

    /** The picture is no longer right. */
    public void forget() {
        right = false;
        done();
    }

    private void dispose() {
        forget();
        if (picture != null) {
            pattern.dispose();
            picture.dispose();
            picture = null;
        }
    }

    /**
     * Begins to paint the picture on another thread; {@link #paint} waits for it.
     *
     * @param other runs it on its thread
     * @param all paints all of it, ground included, and looks at nothing that belongs to the display's thread
     */
    public void besides(Executor other, Consumer<GC> all) {
        forget();
        if (fits()) {
            letGo();
            begun = CompletableFuture.runAsync(() -> picture(all), other);
        }
    }

    /** What the toolkit keeps of the picture at the display server is given up by the first thing painted on it: here, since only this thread talks to it. */
    private void letGo() {
        GC gc = new GC(picture);
        gc.fillRectangle(0, 0, 1, 1);
        gc.dispose();
    }

    /** {@return whether the picture is painted for the control as it is, or is being painted} */
    public boolean begun() {
        return (begun != null || right) && !unsure && control.getSize().equals(size);
    }

    /** Waits for what was begun; whether it is done. */
    private boolean done() {
        if (begun == null) {
            return false;
        }
        try {
            begun.join();
            return true;
        } catch (CompletionException | CancellationException e) {
            return false; // it is painted again, on the display's thread: there it is told what is wrong
        } finally {
            begun = null;
        }
    }

    /**
     * Paints the picture, made anew when it has to be.
     *
     * @param gc where
     */
    public void paint(GC gc) {
        if (!fits()) {
            return;
        }
        if (!right) {
            if (!done()) {
                picture(painter);
            }
            right = true;
        }
        // As a pattern: drawing an image copies all of it each time, on some systems pixel by pixel.
        gc.setBackgroundPattern(pattern);
        scaled(gc, 1f / finer, () -> gc.fillRectangle(0, 0, size.x * finer, size.y * finer));
        gc.setBackgroundPattern(null);
    }

    /** Makes a picture that has room for the control; false when there is nothing to show. A larger one stays: making one takes as long as painting it. */
    private boolean fits() {
        Point now = control.getSize();
        if (now.x <= 0 || now.y <= 0) {
            return false;
        }
        if (unsure || picture == null || !now.equals(size)) {
            int fine = finer();
            boolean same = picture != null && fine == finer;
            if (!same || now.x > room.x || now.y > room.y) {
                room = same ? new Point(Math.max(now.x, room.x), Math.max(now.y, room.y)) : now;
                dispose();
                picture = empty(room.x * fine, room.y * fine);
                pattern = new Pattern(control.getDisplay(), picture);
            } else {
                forget();
            }
            finer = fine;
            size = now;
            unsure = false;
        }
        return true;
    }

    private void picture(Consumer<GC> all) {
        GC on = new GC(picture);
        try {
            scaled(on, finer, () -> all.accept(on));
        } finally {
            on.dispose();
        }
    }

    /** On GTK one that is made by its size alone lies with the display server, and each line would be sent there. */
    private Image empty(int width, int height) {
        return GTK ? new Image(control.getDisplay(), new ImageData(width, height, 24, new PaletteData(0xff0000, 0xff00, 0xff)))
                : new Image(control.getDisplay(), width, height);
    }

    private static void scaled(GC gc, float by, Runnable paint) {
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
        return GTK ? Math.max(1, control.getMonitor().getZoom() / 100) : 1;
    }
}
