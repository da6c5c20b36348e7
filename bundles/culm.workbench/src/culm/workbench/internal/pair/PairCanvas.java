package culm.workbench.internal.pair;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.font.ShippedFont;
import culm.figures.reed.OverlayView;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.Backing;

/** Both reeds on one axis. */
final class PairCanvas extends Canvas implements Figure {
    private static final int WIDEST = 900;
    private static final double LEAST = 200;
    private final Look look;
    private final Backing backing;
    private PairShown shown = PairShown.NOTHING;

    PairCanvas(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        backing = new Backing(this, this::paintAll);
        look.onChange(this, this::anew);
        addListener(SWT.Paint, e -> backing.paint(e.gc));
        addListener(SWT.Resize, e -> anew());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = onScreen().map(d -> d.title() + ". " + d.description()).orElse("");
            }
        });
    }

    private void anew() {
        backing.forget();
        redraw();
    }

    void show(PairShown now) {
        shown = now;
        anew();
    }

    private void paintAll(GC gc) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(getClientArea());
        onScreen().ifPresent(d -> look.painter().paint(gc, d, 0, 0));
    }

    private Optional<Drawing> drawing(double width, culm.figures.TextMeasure measure) {
        if (shown.first().isEmpty() || shown.second().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(OverlayView.draw(shown.first().get(), shown.name(true), shown.second().get(), shown.name(false), shown.limits(), width, measure));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = Math.min(WIDEST, wHint == SWT.DEFAULT ? WIDEST : wHint);
        int height = drawing(Math.max(LEAST, width), look.measure()).map(d -> (int) Math.ceil(d.height())).orElse(20);
        return new Point(width, height);
    }

    @Override
    public String title() {
        return "Two reeds";
    }

    @Override
    public Optional<Drawing> onScreen() {
        return drawing(Math.max(LEAST, Math.min(WIDEST, getClientArea().width)), look.measure());
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        double reach = Math.max(shown.first().map(r -> r.top()).orElse(0.0), shown.second().map(r -> r.top()).orElse(0.0));
        return drawing(reach * Drawing.UNITS_PER_MM * enlargement + 24, ShippedFont.load());
    }

    @Override
    public Table table() {
        return new Table(java.util.List.of(), java.util.List.of());
    }
}
