package culm.workbench.internal.graphs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Limits;
import culm.figures.Drawing;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.reed.OverlayView;
import culm.figures.reed.Reed;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** Two reeds drawn over each other on one axis. */
public final class OverlayCanvas extends DrawnCanvas implements Figure {
    private static final int WIDEST = 1200;
    private static final double LEAST = 200;
    private static final double ROW = 0.5;
    private final Units units;
    private Optional<Two> shown = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();
    private double drawnFor;

    /**
     * Two reeds.
     *
     * @param first drawn in its materials
     * @param firstName what it is called
     * @param second drawn over it as broken lines
     * @param secondName what it is called
     * @param limits by which marks are judged
     */
    public record Two(Reed first, String firstName, Reed second, String secondName, Limits limits) {
    }

    /**
     * An empty canvas.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param units in what lengths are written
     */
    public OverlayCanvas(Composite parent, Look look, Units units) {
        super(parent, look, SWT.NO_FOCUS);
        this.units = units;
        follow(units);
    }

    /**
     * Draws others.
     *
     * @param now both; empty draws nothing
     */
    public void show(Optional<Two> now) {
        shown = now;
        anew();
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    @Override
    protected void resized() {
        // What was laid out for the new width when it was asked for its height is right.
    }

    private Optional<Drawing> fitting(int width) {
        double room = Math.max(LEAST, Math.min(WIDEST, width));
        if (drawn.isEmpty() || drawnFor != room) {
            drawn = drawing(room, look().measure());
            drawnFor = room;
        }
        return drawn;
    }

    private Optional<Drawing> drawing(double width, TextMeasure measure) {
        return shown.map(two -> OverlayView.draw(two.first(), two.firstName(), two.second(), two.secondName(), two.limits(), width, measure, units.now().drawn()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = Math.min(WIDEST, wHint == SWT.DEFAULT ? WIDEST : wHint);
        return new Point(width, fitting(width).map(d -> (int) Math.ceil(d.height())).orElse(20));
    }

    @Override
    public String title() {
        return "Two reeds";
    }

    @Override
    public Optional<Drawing> onScreen() {
        return fitting(getClientArea().width);
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        double reach = shown.map(two -> Math.max(two.first().top(), two.second().top())).orElse(0.0);
        return drawing(reach * Drawing.UNITS_PER_MM * enlargement + 24, ShippedFont.load());
    }

    @Override
    public Table table() {
        return shown.map(OverlayCanvas::table).orElse(new Table(List.of(), List.of()));
    }

    /** How far the sides of both are open, where both have cane on their staples. */
    private static Table table(Two two) {
        List<double[]> rows = new ArrayList<>();
        for (double z = 0; z <= two.first().top(); z += ROW) {
            OptionalDouble a = two.first().open(z);
            OptionalDouble b = two.second().open(z);
            if (a.isPresent() && b.isPresent()) {
                rows.add(new double[] { z, a.getAsDouble(), b.getAsDouble() });
            }
        }
        return new Table(List.of("height mm", two.firstName() + ": sides open by mm", two.secondName() + ": sides open by mm"), rows);
    }
}
