package culm.workbench.internal.graphs;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Assessment;
import culm.figures.Drawing;
import culm.figures.Path;
import culm.figures.Pausing;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Shape;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.font.ShippedFont;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedView;
import culm.workbench.internal.editor.PointerHeight;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The graphs along the reed on the screen, with the values at the pointer's height. */
public final class AlongCanvas extends DrawnCanvas implements Figure {
    private static final int READOUT = 24;
    private final Units units;
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
     * @param units in what lengths are shown
     * @param pointer the height all drawings point at
     */
    public AlongCanvas(Composite parent, Look look, Units units, PointerHeight pointer) {
        super(parent, look, SWT.NONE);
        this.units = units;
        this.pointer = pointer;
        follow(units);
        pointer.onChange(() -> {
            if (!isDisposed()) {
                redraw();
            }
        });
        addListener(SWT.MouseMove, e -> heightAt(e.x).ifPresent(pointer::at));
        addListener(SWT.MouseDown, e -> {
            setFocus();
            pointer.pin(pointer.isPinned() ? OptionalDouble.empty() : heightAt(e.x));
        });
    }

    /** Shows a reed. */
    public void show(Optional<Reed> now) {
        reed = now;
        anew();
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    @Override
    protected String spoken() {
        return onScreen().map(Drawing::description).orElse("");
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
            graphs = Optional.of(new AlongReed(reed.get().assessment(), scale.get(), units.now().drawn()));
            drawn = Optional.of(graphs.get().draw(area.height - READOUT, look().measure()));
        }
        return drawn;
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return reed.map(r -> {
            double width = r.top() * enlargement * Drawing.UNITS_PER_MM + 24;
            return new AlongReed(r.assessment(), ReedView.fitting(r, width), units.now().drawn()).draw(420, ShippedFont.load());
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

    @Override
    protected void paintOver(GC gc) {
        Rectangle area = getClientArea();
        if (scale.isEmpty() || pointer.height().isEmpty() || !scale.get().shows(pointer.height().getAsDouble())) {
            return;
        }
        double x = scale.get().x(pointer.height().getAsDouble());
        Path line = Pausing.up(x, 4, area.height - READOUT, drawn.map(Drawing::items).orElse(List.of()), look().measure());
        look().painter().paint(gc, new Drawing(area.width, area.height, "", "", List.of(new Shape(line, Style.line(Role.INK, 0.7)))), 0, 0);
        gc.setForeground(look().colour(Role.INK));
        String text = units.now().drawn().text(pointer.height().getAsDouble(), 1) + "  ·  " + readout();
        double room = area.width - scale.get().left();
        gc.setFont(look().font(look().measure().width(text, Size.BODY, false) <= room ? Size.BODY : Size.SMALL, SWT.NORMAL));
        gc.drawString(text, (int) scale.get().left(), area.height - READOUT + 2, true);
    }
}
