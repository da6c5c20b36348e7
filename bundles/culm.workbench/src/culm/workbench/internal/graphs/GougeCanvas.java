package culm.workbench.internal.graphs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Blank;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;
import culm.figures.parts.GougeThickness;
import culm.geometry.GeometryException;
import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The gouge as it is and its thickness enlarged, with the value under the pointer. */
public final class GougeCanvas extends DrawnCanvas implements Figure {
    /** How far along the bark from the middle a gouge is told, mm. */
    public static final double REACH = 4;
    private static final int READOUT = 20;
    private static final double WIDE = 420;
    private static final double HIGH = 340;
    private final Units units;
    private Optional<Blank> blank = Optional.empty();
    private Optional<ChartDrawing> drawn = Optional.empty();
    private int pointerX = -1;

    /**
     * An empty canvas.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param units in what lengths are shown
     */
    public GougeCanvas(Composite parent, Look look, Units units) {
        super(parent, look, SWT.NONE);
        this.units = units;
        follow(units);
        addListener(SWT.MouseDown, e -> setFocus());
        addListener(SWT.MouseMove, e -> pointAt(e.x));
        addListener(SWT.MouseExit, e -> pointAt(-1));
    }

    private void pointAt(int x) {
        pointerX = x;
        redraw();
    }

    /** Shows a blank's gouge. */
    public void show(Optional<Blank> now) {
        blank = now;
        anew();
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    @Override
    public String title() {
        return "Gouge";
    }

    private Optional<ChartDrawing> chart() {
        if (drawn.isEmpty()) {
            Rectangle area = getClientArea();
            drawn = blank.map(b -> GougeThickness.draw(b, area.width, area.height - READOUT, look().measure(), units.now().drawn()));
        }
        return drawn;
    }

    @Override
    public Optional<Drawing> onScreen() {
        return chart().map(ChartDrawing::drawing);
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return blank.map(b -> GougeThickness.draw(b, WIDE, HIGH, ShippedFont.load(), units.now().drawn()).drawing());
    }

    @Override
    public Table table() {
        return table(blank);
    }

    /** {@return the thickness of a blank's gouge, row by row along the bark; why there is none where it cannot be told} */
    public static Table table(Optional<Blank> of) {
        List<double[]> rows = new ArrayList<>();
        try {
            of.map(b -> b.parts().gouge()).ifPresent(gouge -> {
                for (int i = 0; i <= 10 * REACH; i++) {
                    double phi = i / 10.0 / gouge.tubeRadius();
                    rows.add(new double[] { i / 10.0, gouge.at(0).thickness(phi), gouge.at(Double.MAX_VALUE).thickness(phi) });
                }
            });
        } catch (GeometryException e) {
            return new Table(List.of(e.getMessage()), List.of());
        }
        return new Table(List.of("along the bark mm", "thickness at the fold mm", "thickness at the end mm"), rows);
    }

    @Override
    protected void paintOver(GC gc) {
        Rectangle area = getClientArea();
        Optional<ChartDrawing> now = chart();
        if (now.isEmpty() || pointerX < now.get().plot().x() || pointerX > now.get().plot().right()) {
            return;
        }
        gc.setForeground(look().colour(Role.INK));
        gc.setLineWidth(1);
        gc.drawLine(pointerX, (int) now.get().plot().y(), pointerX, (int) now.get().plot().bottom());
        gc.setFont(look().font(Size.SMALL, SWT.NORMAL));
        gc.drawString(readout(units.now().drawn().toMm(now.get().x().value(pointerX))), 12, area.height - READOUT, true);
    }

    private String readout(double along) {
        Lengths unit = units.now().drawn();
        try {
            Gouge gouge = blank.get().parts().gouge();
            GougeSection section = gouge.at(0);
            return unit.text(section.thickness(Math.abs(along) / gouge.tubeRadius()), 2) + " thick, " + unit.fixed(Math.abs(along), 1) + " from the middle";
        } catch (GeometryException e) {
            return unit.told(e.told());
        }
    }
}
