package culm.workbench.internal.look;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;

import culm.figures.Palette;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.paint.SwtColors;
import culm.workbench.internal.paint.SwtFonts;
import culm.workbench.internal.paint.SwtMeasure;
import culm.workbench.internal.paint.SwtPainter;

/** How the window looks now: its palette and fonts. Used on the display's thread only. */
public final class Look {
    private final Display display;
    private final Path fontFolder;
    private final SwtFonts fonts;
    private final SwtMeasure measure;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final ExecutorService besides = Executors.newFixedThreadPool(2, work -> {
        Thread thread = new Thread(work, "Culm besides");
        thread.setDaemon(true);
        return thread;
    });
    private boolean dark;

    /**
     * A light look.
     *
     * @param display the display
     * @param folder where the shipped font's files may be put
     */
    public Look(Display display, Path folder) {
        this.display = display;
        this.fontFolder = folder;
        this.fonts = new SwtFonts(display, folder);
        this.measure = new SwtMeasure(display, fonts);
        display.disposeExec(besides::shutdown);
    }

    /** {@return whether it is dark} */
    public boolean dark() {
        return dark;
    }

    /**
     * Makes it dark or light and tells those who paint.
     *
     * @param now whether dark
     */
    public void dark(boolean now) {
        if (dark != now) {
            dark = now;
            listeners.forEach(Runnable::run);
        }
    }

    /**
     * Runs something on every change for as long as a control lives.
     *
     * @param control the control
     * @param change what to run
     */
    public void onChange(Control control, Runnable change) {
        listeners.add(change);
        control.addListener(SWT.Dispose, e -> listeners.remove(change));
    }

    /** Runs something on every change for as long as the program runs. */
    void onChange(Runnable change) {
        listeners.add(change);
    }

    /** {@return the colours} */
    public Palette palette() {
        return dark ? Palette.DARK : Palette.LIGHT;
    }

    /**
     * A colour.
     *
     * @param role what it means
     * @return the colour now
     */
    public Color colour(Role role) {
        return SwtColors.of(palette().of(role));
    }

    /**
     * A font.
     *
     * @param size what for
     * @param style NORMAL, BOLD or ITALIC
     * @return the font; not to be disposed
     */
    public Font font(Size size, int style) {
        return fonts.get(size, style);
    }

    /**
     * Writes a line of text in the foreground of a GC. It is kept as it was laid out, for text that is painted again and again.
     *
     * @param gc where
     * @param text the text
     * @param size its size
     * @param bold whether it is bold
     * @param x its left end
     * @param y its upper end
     */
    public void write(GC gc, String text, Size size, boolean bold, int x, int y) {
        fonts.texts().draw(gc, text, size, bold, x, y);
    }

    /** {@return how much room text takes on this screen} */
    public SwtMeasure measure() {
        return measure;
    }

    /** {@return a painter in today's colours} */
    public SwtPainter painter() {
        return new SwtPainter(palette(), fonts, measure);
    }

    /** {@return a painter in the colours of paper, whatever the window looks like} */
    public SwtPainter paperPainter() {
        return new SwtPainter(Palette.PRINT, fonts, measure);
    }

    /**
     * Gives a control the ground and ink of this look, now and after every change.
     *
     * @param control the control
     * @param ground its ground
     * @param ink its ink
     */
    public void dress(Control control, Role ground, Role ink) {
        Runnable paint = () -> {
            control.setBackground(colour(ground));
            control.setForeground(colour(ink));
        };
        paint.run();
        onChange(control, paint);
        if (control instanceof Tree || control instanceof Table) {
            // The toolkit gives a list the colour of what is chosen together with its ground, and knows the system's new one only by then.
            Listener again = e -> paint.run();
            display.addListener(SWT.Settings, again);
            control.addListener(SWT.Dispose, e -> display.removeListener(SWT.Settings, again));
        }
    }

    /**
     * Lets the ground of what a control lies on be seen through it, now and after every change.
     *
     * @param control the control
     */
    public void clear(Control control) {
        control.setBackground(clear());
        onChange(control, () -> control.setBackground(clear()));
    }

    /** {@return a ground that is seen through: each other one is painted at each change of what stands on it, and ten of them lie below each other} */
    Color clear() {
        Color paper = colour(Role.PAPER);
        return new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 0);
    }

    /** {@return where the shipped font's files are put} */
    public Path fontFolder() {
        return fontFolder;
    }

    /**
     * Runs something on the display's thread; not at all when the display is gone by then.
     *
     * @param work what to run
     */
    public void later(Runnable work) {
        try {
            display.asyncExec(work);
        } catch (SWTException e) {
            if (e.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw e;
            }
        }
    }

    /** {@return where pictures are painted and prepared while others do something else; for work that ends within milliseconds} */
    public Executor besides() {
        return besides;
    }

    /** {@return the display it is for} */
    public Display display() {
        return display;
    }
}
