package culm.workbench.internal.bench.paper;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.Role;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.Backing;
import culm.workbench.internal.paint.SwtColors;
import culm.workbench.internal.paint.Transformed;

/** A page as it will be printed, made smaller or larger to fit. A click shows it as large as on paper, another the whole again. */
final class PagePreview extends Canvas {
    private static final int EDGE = 10;
    private final Look look;
    private final Backing backing;
    private Optional<Drawing> page = Optional.empty();
    private boolean close;
    private double atX = 0.5;
    private double atY;

    PagePreview(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        look.dress(this, Role.GRID, Role.INK);
        backing = new Backing(this, this::paint);
        setToolTipText("Click to see a part closer, click again for the whole page");
        addListener(SWT.Paint, e -> backing.paint(e.gc));
        addListener(SWT.MouseDown, e -> {
            close = !close;
            atX = e.x / (double) Math.max(1, getClientArea().width);
            atY = e.y / (double) Math.max(1, getClientArea().height);
            again();
        });
        addListener(SWT.MouseMove, e -> {
            if (close) {
                atX = e.x / (double) Math.max(1, getClientArea().width);
                atY = e.y / (double) Math.max(1, getClientArea().height);
                again();
            }
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = page.map(p -> p.title() + ". " + p.description()).orElse("");
            }
        });
    }

    void show(Optional<Drawing> now) {
        page = now;
        again();
    }

    /** {@return the page that is shown} */
    Optional<Drawing> page() {
        return page;
    }

    private void again() {
        backing.forget();
        redraw();
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(look.colour(Role.GRID));
        gc.fillRectangle(area);
        if (page.isEmpty()) {
            return;
        }
        Drawing drawing = page.get();
        double whole = Math.min((area.width - 2 * EDGE) / drawing.width(), (area.height - 2 * EDGE) / drawing.height());
        double scale = close ? 1 : Math.max(0.1, whole);
        double width = drawing.width() * scale;
        double height = drawing.height() * scale;
        double x = width <= area.width ? (area.width - width) / 2 : (area.width - width) * atX;
        double y = height <= area.height ? (area.height - height) / 2 : (area.height - height) * atY;
        gc.setBackground(SwtColors.of(Palette.PRINT.of(Role.PAPER)));
        gc.fillRectangle((int) x, (int) y, (int) Math.ceil(width), (int) Math.ceil(height));
        Transformed.paint(gc, t -> {
            t.translate((float) x, (float) y);
            t.scale((float) scale, (float) scale);
        }, () -> look.paperPainter().paint(gc, drawing, 0, 0));
    }
}
