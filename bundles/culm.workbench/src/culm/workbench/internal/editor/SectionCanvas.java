package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.font.ShippedFont;
import culm.figures.reed.CrossSection;
import culm.figures.reed.Reed;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The cross-section at the pointer's height, or at the pinned one; where the sides close when the pointer was nowhere yet. */
final class SectionCanvas extends DrawnCanvas implements Figure {
    private static final double PAPER = 330;
    private static final int HEIGHT = 270;
    private final Units units;
    private final PointerHeight pointer;
    private Optional<Reed> reed = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();
    private LaidOut ahead = LaidOut.NOTHING;

    SectionCanvas(Composite parent, Look look, Units units, PointerHeight pointer) {
        super(parent, look, SWT.NO_FOCUS);
        this.units = units;
        this.pointer = pointer;
        follow(units);
        pointer.onChange(() -> {
            if (!isDisposed()) {
                anew();
            }
        });
    }

    /** @param laidOut what is laid out of it already */
    void show(Optional<Reed> now, LaidOut laidOut) {
        reed = now;
        ahead = laidOut;
        anew();
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    /** {@return the height of the section that is shown} */
    double height(Reed of) {
        return next().height(of);
    }

    /** {@return how another blank would be laid out here} */
    SectionLayout next() {
        Rectangle area = getClientArea();
        return new SectionLayout(area.width, area.height, pointer.height(), units.now().drawn());
    }

    @Override
    public Optional<Drawing> onScreen() {
        if (drawn.isEmpty() && reed.isPresent()) {
            SectionLayout layout = next();
            drawn = Optional.of(ahead.section(layout).orElseGet(() -> layout.draw(reed.get(), look().measure())));
        }
        return drawn;
    }

    @Override
    public String title() {
        return "Section";
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return reed.map(r -> CrossSection.draw(r, height(r), PAPER, PAPER, ShippedFont.load(), units.now().drawn()));
    }

    @Override
    public Table table() {
        return new Table(List.of("height mm"), reed.map(r -> List.of(new double[] { height(r) })).orElse(List.of()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 220 : wHint, HEIGHT);
    }

    @Override
    protected void paintOver(GC gc) {
        if (pointer.isPinned()) {
            gc.setBackground(look().colour(Role.INK));
            gc.fillOval(4, 6, 7, 7);
            gc.setForeground(look().colour(Role.INK));
            gc.setLineWidth(1);
            gc.drawLine(7, 13, 7, 19);
        }
    }
}
