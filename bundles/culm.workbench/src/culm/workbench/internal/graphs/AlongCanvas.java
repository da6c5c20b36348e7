package culm.workbench.internal.graphs;

import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.Assessment;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.font.ShippedFont;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedView;
import culm.workbench.internal.editor.PointerHeight;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.paint.Backing;

/** The graphs along the reed on the screen, with the values at the pointer's height. */
public final class AlongCanvas extends Canvas implements Figure {
    private static final int READOUT = 24;
    private final Look look;
    private final Backing backing;
    private final PointerHeight pointer;
    private Optional<Reed> reed = Optional.empty();
    private Optional<AlongReed> graphs = Optional.empty();
    private Optional<Drawing> drawn = Optional.empty();
    private Optional<Scale> scale = Optional.empty();

    /**
     * An empty canvas.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param pointer the height all drawings point at
     */
    public AlongCanvas(Composite parent, Look look, PointerHeight pointer) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        this.pointer = pointer;
        look.dress(this, Role.PAPER, Role.INK);
        backing = new Backing(this, this::paintAll);
        look.onChange(this, () -> {
            backing.forget();
            redraw();
        });
        pointer.onChange(() -> {
            if (!isDisposed()) {
                redraw();
            }
        });
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> {
            drawn = Optional.empty();
            backing.forget();
        });
        addListener(SWT.MouseMove, e -> heightAt(e.x).ifPresent(pointer::at));
        addListener(SWT.MouseDown, e -> {
            setFocus();
            pointer.pin(pointer.isPinned() ? OptionalDouble.empty() : heightAt(e.x));
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = onScreen().map(Drawing::description).orElse("");
            }
        });
    }

    /** Shows a reed. */
    public void show(Optional<Reed> now) {
        reed = now;
        drawn = Optional.empty();
        backing.forget();
        redraw();
    }

    private OptionalDouble heightAt(int x) {
        return scale.isPresent() && scale.get().shows(scale.get().z(x)) ? OptionalDouble.of(Math.rint(scale.get().z(x) * 100) / 100) : OptionalDouble.empty();
    }

    @Override
    public String title() {
        return "Graphs along the reed";
    }

    @Override
    public Optional<Drawing> onScreen() {
        if (drawn.isEmpty() && reed.isPresent()) {
            Rectangle area = getClientArea();
            scale = Optional.of(ReedView.fitting(reed.get(), area.width));
            graphs = Optional.of(new AlongReed(reed.get().assessment(), scale.get()));
            drawn = Optional.of(graphs.get().draw(area.height - READOUT, look.measure()));
        }
        return drawn;
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return reed.map(r -> {
            double width = r.top() * enlargement * Drawing.UNITS_PER_MM + 24;
            return new AlongReed(r.assessment(), ReedView.fitting(r, width)).draw(420, ShippedFont.load());
        });
    }

    @Override
    public Table table() {
        return AlongReed.table(reed.map(Reed::assessment));
    }

    /** {@return what is said of the pointer's height} */
    public String readout() {
        Optional<Assessment> a = reed.map(Reed::assessment);
        return a.isPresent() && graphs.isPresent() && pointer.height().isPresent() ? graphs.get().readout(pointer.height().getAsDouble()) : "";
    }

    private void paintAll(GC gc) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(getClientArea());
        onScreen().ifPresent(d -> look.painter().paint(gc, d, 0, 0));
    }

    private void paint(Event e) {
        Rectangle area = getClientArea();
        backing.paint(e.gc);
        if (scale.isEmpty() || pointer.height().isEmpty() || !scale.get().shows(pointer.height().getAsDouble())) {
            return;
        }
        int x = (int) Math.round(scale.get().x(pointer.height().getAsDouble()));
        e.gc.setForeground(look.colour(Role.INK));
        e.gc.setLineWidth(1);
        e.gc.drawLine(x, 4, x, area.height - READOUT);
        String text = culm.model.text.Numbers.fixed(pointer.height().getAsDouble(), 1) + " mm  ·  " + readout();
        double room = area.width - scale.get().left();
        e.gc.setFont(look.font(look.measure().width(text, Size.BODY, false) <= room ? Size.BODY : Size.SMALL, SWT.NORMAL));
        e.gc.drawString(text, (int) scale.get().left(), area.height - READOUT + 2, true);
    }
}
