package culm.workbench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.parts.GougeThickness;
import culm.figures.parts.ShapeOutline;
import culm.figures.parts.ThreadTurns;
import culm.figures.reed.StapleDrawing;
import culm.geometry.GeometryException;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.Staple;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.graphs.GougeCanvas;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The chosen part: the outline of a shape, the gouge and its thickness, the sides of a staple and its bore, the turns of a thread. */
public final class PartCanvas extends DrawnCanvas implements Figure {
    private static final double WIDE = 560;
    private static final double HIGH = 340;
    private static final double STAPLE_HIGH = 600;
    private static final double MOST_WIDE = 620;
    private static final double MOST_HIGH = 380;
    private static final double NARROWEST = 160;
    private static final double SMALLER = 0.94;
    private static final double STEP = 0.5;
    private final Units units;
    private String kind = "";
    private Optional<Blank> blank = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();

    PartCanvas(Composite parent, Look look, Units units) {
        super(parent, look, SWT.NO_FOCUS);
        this.units = units;
        follow(units);
    }

    /** Shows a part. @param now the blank it is drawn in; empty for nothing to draw */
    void show(String newKind, Optional<Blank> now) {
        if (!kind.equals(newKind) || !blank.equals(now)) {
            kind = newKind;
            blank = now;
            anew();
        }
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    @Override
    public String title() {
        return kind.isEmpty() ? "Part" : Character.toUpperCase(kind.charAt(0)) + kind.substring(1);
    }

    @Override
    public Optional<Drawing> onScreen() {
        if (drawn.isEmpty() && blank.isPresent()) {
            Rectangle area = getClientArea();
            double width = Math.min(MOST_WIDE, area.width);
            Drawing made = draw(blank.get(), width, Math.min(mostHigh(), area.height), look().measure());
            while (made.height() > area.height && width * SMALLER > NARROWEST) {
                width *= SMALLER;
                made = draw(blank.get(), width, Math.min(mostHigh(), area.height), look().measure());
            }
            drawn = Optional.of(made);
        }
        return drawn;
    }

    private double mostHigh() {
        return kind.equals("staple") ? STAPLE_HIGH : MOST_HIGH;
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return blank.map(b -> draw(b, WIDE, kind.equals("staple") ? STAPLE_HIGH : HIGH, ShippedFont.load()));
    }

    private Drawing draw(Blank of, double width, double height, TextMeasure measure) {
        Lengths unit = units.now().drawn();
        return switch (kind) {
            case "shape" -> ShapeOutline.draw(of, width, measure, unit);
            case "gouge" -> GougeThickness.draw(of, width, height, measure, unit, GougeCanvas.REACH).drawing();
            case "thread" -> ThreadTurns.draw(of, width, measure, unit);
            default -> StapleDrawing.draw(of, width, height, measure, unit);
        };
    }

    @Override
    public Table table() {
        try {
            return switch (kind) {
                case "shape" -> new Table(List.of("from the fold mm", "width mm"), blank.map(PartCanvas::widths).orElse(List.of()));
                case "gouge" -> GougeCanvas.table(blank);
                case "thread" -> new Table(List.of("thread mm", "turn to turn mm"), blank.map(PartCanvas::turns).orElse(List.of()));
                default -> new Table(List.of("height mm", "bore area mm²"), blank.map(PartCanvas::areas).orElse(List.of()));
            };
        } catch (GeometryException e) {
            return new Table(List.of(e.getMessage()), List.of());
        }
    }

    private static List<double[]> widths(Blank of) {
        List<double[]> rows = new ArrayList<>();
        ShapeWidth width = of.parts().width();
        double to = Math.min(of.parts().foldedLength(), width.to());
        for (double s = Math.max(0, width.from()); s <= to + 1e-9; s += STEP) {
            rows.add(new double[] {s, width.at(Math.min(s, to))});
        }
        return rows;
    }

    private static List<double[]> turns(Blank of) {
        return List.of(new double[] {of.number(Inputs.THREAD_DIAMETER), of.number(Inputs.THREAD_PITCH)});
    }

    private static List<double[]> areas(Blank of) {
        List<double[]> rows = new ArrayList<>();
        Staple staple = of.parts().staple();
        for (double z = 0; z <= staple.length() + 1e-9; z += STEP) {
            rows.add(new double[] {z, staple.bore(Math.min(z, staple.length())).area()});
        }
        return rows;
    }
}
