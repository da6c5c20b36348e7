package culm.workbench.internal.widgets;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Role;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.paint.Backing;
import culm.workbench.internal.paint.SwtPainter;

/** Shows a drawing: how its picture is kept and forgotten, painted, and spoken to those who do not see it. */
public abstract class DrawnCanvas extends Canvas {
    private static final Drawing NOTHING = new Drawing(1, 1, "", "", List.of());
    private final Look look;
    private final Backing backing;

    /**
     * An empty canvas.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param style SWT's style beside what drawings need
     */
    protected DrawnCanvas(Composite parent, Look look, int style) {
        super(parent, SWT.DOUBLE_BUFFERED | style);
        this.look = look;
        look.clear(this); // the picture covers it all
        backing = new Backing(this, this::paintAll);
        look.onChange(this, this::anew);
        addListener(SWT.Paint, e -> {
            backing.paint(e.gc);
            paintOver(e.gc);
        });
        addListener(SWT.Resize, e -> resized());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = spoken();
            }
        });
    }

    /** {@return the drawing as it is on the screen; empty when there is nothing to draw} */
    public abstract Optional<Drawing> onScreen();

    /** What was laid out is no longer right. */
    protected abstract void forget();

    /** Draws everything anew. */
    protected final void anew() {
        forget();
        backing.forget();
        redraw();
    }

    /** It is painted on another thread now, while this one has other things to do; not again while nothing has changed. */
    public final void paintBesides() {
        if (backing.begun() || !isVisible()) {
            return;
        }
        onScreen().ifPresent(all -> {
            Color paper = look.colour(Role.PAPER);
            Rectangle area = getClientArea();
            SwtPainter painter = look.painter();
            double left = left();
            backing.besides(look.besides(), gc -> paintAll(gc, paper, area, painter, all, left));
        });
    }

    /** Draws everything anew whenever lengths are shown in another unit. */
    protected final void follow(Units units) {
        units.onChange(this, this::anew);
    }

    /** The canvas has another size. */
    protected void resized() {
        anew();
    }

    /** {@return where the drawing begins, across} */
    protected double left() {
        return 0;
    }

    /** Paints what changes more often than the drawing. */
    protected void paintOver(GC gc) {
        // Most show only their drawing.
    }

    /** {@return what is said of the drawing} */
    protected String spoken() {
        return onScreen().map(d -> d.title() + ". " + d.description()).orElse("");
    }

    /** {@return colours and fonts} */
    protected final Look look() {
        return look;
    }

    private void paintAll(GC gc) {
        paintAll(gc, look.colour(Role.PAPER), getClientArea(), look.painter(), onScreen().orElse(NOTHING), left());
    }

    /** All that it needs is handed to it, since it is not always done by the display's thread. */
    private static void paintAll(GC gc, Color paper, Rectangle area, SwtPainter painter, Drawing all, double left) {
        gc.setBackground(paper);
        gc.fillRectangle(area);
        painter.paint(gc, all, left, 0);
    }
}
