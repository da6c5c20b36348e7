package culm.workbench.internal.explore;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** A chart on the screen. It is copied, written and printed as other drawings of the editor are. */
final class ChartCanvas extends DrawnCanvas implements Figure {
    private static final double WIDE = 640;
    private static final double HIGH = 420;
    private final String title;
    private final Units units;
    private Optional<Content> content = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();
    private Optional<ChartDrawing> chart = Optional.empty();
    private BiConsumer<Double, Double> pick = (x, y) -> {
    };

    /** What is drawn. */
    interface Content {
        /** Draws it into a size. @param unit in what lengths are written */
        Drawing draw(double width, double height, TextMeasure measure, Lengths unit);

        /** The same with its axes, if it has any to point at. */
        default Optional<ChartDrawing> chart(double width, double height, TextMeasure measure, Lengths unit) {
            return Optional.empty();
        }

        /** Its numbers. */
        Table table();
    }

    ChartCanvas(Composite parent, Workshop workshop, String title) {
        super(parent, workshop.look(), SWT.NONE);
        this.title = title;
        units = workshop.units();
        follow(units);
        addListener(SWT.MouseDown, e -> {
            setFocus();
            point(e.x, e.y);
        });
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.KeyDown, e -> {
            // takes the focus by Tab, so that a drawing can be copied without a mouse
        });
    }

    /** Shows something; empty shows nothing. */
    void show(Optional<Content> now) {
        content = now;
        anew();
    }

    /** Called with the values of the place where the chart is clicked, as its axes count. */
    void onPick(BiConsumer<Double, Double> todo) {
        pick = todo;
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
        chart = Optional.empty();
    }

    @Override
    protected String spoken() {
        return onScreen().map(Drawing::description).orElse(title);
    }

    private void point(int x, int y) {
        onScreen();
        chart.filter(c -> x >= c.plot().x() && x <= c.plot().right() && y >= c.plot().y() && y <= c.plot().bottom())
                .ifPresent(c -> pick.accept(c.x().value(x), c.y().value(y)));
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Optional<Drawing> onScreen() {
        Rectangle area = getClientArea();
        if (drawn.isEmpty() && content.isPresent() && area.width > 0 && area.height > 0) {
            chart = content.get().chart(area.width, area.height, look().measure(), unit());
            drawn = Optional.of(chart.map(ChartDrawing::drawing).orElseGet(() -> content.get().draw(area.width, area.height, look().measure(), unit())));
        }
        return drawn;
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return content.map(c -> c.draw(WIDE, HIGH, ShippedFont.load(), unit()));
    }

    private Lengths unit() {
        return units.now().drawn();
    }

    @Override
    public Table table() {
        return content.map(Content::table).orElse(new Table(List.of(), List.of()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 400 : wHint, hHint == SWT.DEFAULT ? 240 : hHint);
    }
}
