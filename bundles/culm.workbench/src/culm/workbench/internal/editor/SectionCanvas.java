package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.Assessment;
import culm.blank.Mark;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.font.ShippedFont;
import culm.figures.reed.CrossSection;
import culm.figures.reed.Reed;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.Backing;

/** The cross-section at the pointer's height, or at the pinned one; where the sides close when the pointer was nowhere yet. */
final class SectionCanvas extends Canvas implements Figure {
    private static final double PAPER = 330;
    private static final int HEIGHT = 270;
    private final Look look;
    private final PointerHeight pointer;
    private final Backing backing;
    private Optional<Reed> reed = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();

    SectionCanvas(Composite parent, Look look, PointerHeight pointer) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        this.pointer = pointer;
        look.dress(this, Role.PAPER, Role.INK);
        backing = new Backing(this, this::paintAll);
        look.onChange(this, this::changed);
        pointer.onChange(this::changed);
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> changed());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = drawing().map(d -> d.title() + ". " + d.description()).orElse("");
            }
        });
    }

    void show(Optional<Reed> now) {
        reed = now;
        changed();
    }

    private void changed() {
        if (!isDisposed()) {
            drawn = Optional.empty();
            backing.forget();
            redraw();
        }
    }

    /** {@return the height of the section that is shown} */
    double height(Reed of) {
        Assessment a = of.assessment();
        return pointer.height().orElseGet(() -> a.sidesCloseAt().orElseGet(() -> of.mark(Mark.WRAP_TOP).orElse(0)));
    }

    /** {@return what is drawn now} */
    Optional<Drawing> drawing() {
        if (drawn.isEmpty() && reed.isPresent()) {
            Rectangle area = getClientArea();
            drawn = Optional.of(CrossSection.draw(reed.get(), height(reed.get()), area.width, area.height, look.measure()));
        }
        return drawn;
    }

    @Override
    public String title() {
        return "Section";
    }

    @Override
    public Optional<Drawing> onScreen() {
        return drawing();
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return reed.map(r -> CrossSection.draw(r, height(r), PAPER, PAPER, ShippedFont.load()));
    }

    @Override
    public Table table() {
        return new Table(List.of("height mm"), reed.map(r -> List.of(new double[] { height(r) })).orElse(List.of()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 220 : wHint, HEIGHT);
    }

    private void paintAll(GC gc) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(getClientArea());
        drawing().ifPresent(d -> look.painter().paint(gc, d, 0, 0));
    }

    private void paint(Event e) {
        backing.paint(e.gc);
        if (pointer.isPinned()) {
            e.gc.setBackground(look.colour(Role.INK));
            e.gc.fillOval(4, 6, 7, 7);
            e.gc.setForeground(look.colour(Role.INK));
            e.gc.setLineWidth(1);
            e.gc.drawLine(7, 13, 7, 19);
        }
    }
}
