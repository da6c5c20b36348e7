package culm.workbench.internal.bench.page;

import java.util.Optional;
import java.util.function.BiFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.TextMeasure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** A drawing that is as wide as its place and as high as it has to be. */
public final class DrawingCanvas extends DrawnCanvas {
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
        super(parent, look, SWT.NO_FOCUS);
    }

    /** The same, drawn anew whenever lengths are shown in another unit. */
    public DrawingCanvas following(Units units) {
        follow(units);
        return this;
    }

    /** Shows a drawing, made for a width in points. */
    public void show(BiFunction<Double, TextMeasure, Optional<Drawing>> now) {
        draw = now;
        anew();
    }

    @Override
    protected void forget() {
        drawnFor = -1;
    }

    @Override
    protected void resized() {
        // What was laid out for the new width when it was asked for its height is right.
    }

    private Optional<Drawing> made(int width) {
        if (drawnFor != width && width > 0) {
            drawn = draw.apply((double) width, look().measure());
            drawnFor = width;
        }
        return drawn;
    }

    @Override
    public Optional<Drawing> onScreen() {
        return made(Math.max(100, getClientArea().width));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 400 : wHint;
        return new Point(width, made(Math.max(100, width)).map(d -> (int) Math.ceil(d.height())).orElse(0));
    }
}
