package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Assessment;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The computed numbers, right-aligned, each with its unit and, where there is one, its give or take. */
final class NumbersPanel extends DrawnCanvas {
    private static final int MARGIN = 8;
    private final Units units;
    private Optional<Assessment> assessment = Optional.empty();
    private List<ResultLines.Line> lines = List.of();
    private Optional<Drawing> drawn = Optional.empty();

    NumbersPanel(Composite parent, Look look, Units units) {
        super(parent, look, SWT.NO_FOCUS);
        this.units = units;
        units.onChange(this, () -> show(assessment));
    }

    @Override
    protected String spoken() {
        return String.join("; ", lines.stream().map(l -> l.words() + " " + l.value()).toList());
    }

    void show(Optional<Assessment> now) {
        assessment = now;
        LengthUnit unit = units.now();
        List<ResultLines.Line> next = now.map(a -> ResultLines.of(a, unit)).orElse(List.of());
        if (!next.equals(lines)) {
            lines = next;
            anew();
        }
    }

    /** {@return what stands there} */
    List<ResultLines.Line> lines() {
        return lines;
    }

    private int lineHeight() {
        return (int) Math.ceil(look().measure().line(Size.BODY)) + 6;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 220 : wHint, Math.max(12, lines.size()) * lineHeight() + 10);
    }

    @Override
    public Optional<Drawing> onScreen() {
        if (drawn.isEmpty() && !lines.isEmpty()) {
            Rectangle area = getClientArea();
            Pen pen = new Pen();
            double base = 4 + look().measure().ascent(Size.BODY);
            for (ResultLines.Line line : lines) {
                pen.text(line.words(), MARGIN, base, Anchor.START, Size.BODY, Role.QUIET);
                if (line.weak()) {
                    pen.text(line.value(), area.width - MARGIN, base, Anchor.END, Size.BODY, Role.QUIET);
                } else {
                    pen.bold(line.value(), area.width - MARGIN, base, Anchor.END, Size.BODY, Role.INK);
                }
                base += lineHeight();
            }
            drawn = Optional.of(pen.drawing(Math.max(1, area.width), Math.max(1, area.height), "Numbers", ""));
        }
        return drawn;
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }
}
