package culm.workbench.internal.bench.page;

import java.util.Optional;
import java.util.function.BiFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.Backing;

/** A drawing that is as wide as its place and as high as it has to be. */
public final class DrawingCanvas extends Canvas {
    private final Look look;
    private final Backing backing;
    private BiFunction<Double, TextMeasure, Optional<Drawing>> draw = (width, measure) -> Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();
    private int drawnFor = -1;

    /**
     * An empty canvas.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public DrawingCanvas(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        backing = new Backing(this, this::paint);
        look.onChange(this, this::again);
        addListener(SWT.Paint, e -> backing.paint(e.gc));
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = drawing().map(d -> d.title() + ". " + d.description()).orElse("");
            }
        });
    }

    /** Shows a drawing, made for a width in points. */
    public void show(BiFunction<Double, TextMeasure, Optional<Drawing>> now) {
        draw = now;
        again();
    }

    private void again() {
        drawnFor = -1;
        backing.forget();
        redraw();
    }

    private Optional<Drawing> made(int width) {
        if (drawnFor != width && width > 0) {
            drawn = draw.apply((double) width, look.measure());
            drawnFor = width;
        }
        return drawn;
    }

    /** {@return what is drawn now} */
    public Optional<Drawing> drawing() {
        return made(Math.max(100, getClientArea().width));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 400 : wHint;
        return new Point(width, made(Math.max(100, width)).map(d -> (int) Math.ceil(d.height())).orElse(0));
    }

    private void paint(GC gc) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(getClientArea());
        drawing().ifPresent(d -> look.painter().paint(gc, d, 0, 0));
    }
}
