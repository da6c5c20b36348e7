package culm.workbench.internal.pair;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.font.ShippedFont;
import culm.figures.reed.OverlayView;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** Both reeds on one axis. */
final class PairCanvas extends DrawnCanvas implements Figure {
    private static final int WIDEST = 1200;
    private static final double LEAST = 200;
    private final Units units;
    private PairShown shown = PairShown.NOTHING;

    PairCanvas(Composite parent, Look look, Units units) {
        super(parent, look, SWT.NO_FOCUS);
        this.units = units;
        follow(units);
    }

    @Override
    protected void forget() {
        // It is laid out whenever it is asked for.
    }

    void show(PairShown now) {
        shown = now;
        anew();
    }

    private Optional<Drawing> drawing(double width, culm.figures.TextMeasure measure) {
        if (shown.first().isEmpty() || shown.second().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(OverlayView.draw(shown.first().get(), shown.name(true), shown.second().get(), shown.name(false), shown.limits(), width, measure,
                units.now().drawn()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = Math.min(WIDEST, wHint == SWT.DEFAULT ? WIDEST : wHint);
        int height = drawing(Math.max(LEAST, width), look().measure()).map(d -> (int) Math.ceil(d.height())).orElse(20);
        return new Point(width, height);
    }

    @Override
    public String title() {
        return "Two reeds";
    }

    @Override
    public Optional<Drawing> onScreen() {
        return drawing(Math.max(LEAST, Math.min(WIDEST, getClientArea().width)), look().measure());
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
