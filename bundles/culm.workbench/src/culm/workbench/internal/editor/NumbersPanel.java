package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.Assessment;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.Units;

/** The computed numbers, right-aligned, each with its unit and, where there is one, its give or take. */
final class NumbersPanel extends Canvas {
    private static final int MARGIN = 8;
    private final Look look;
    private final Units units;
    private Optional<Assessment> assessment = Optional.empty();
    private List<ResultLines.Line> lines = new ArrayList<>();

    NumbersPanel(Composite parent, Look look, Units units) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        this.units = units;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        Runnable end = units.onChange(() -> show(assessment));
        addListener(SWT.Dispose, e -> end.run());
        addListener(SWT.Paint, this::paint);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = String.join("; ", lines.stream().map(l -> l.words() + " " + l.value()).toList());
            }
        });
    }

    void show(Optional<Assessment> now) {
        assessment = now;
        LengthUnit unit = units.now();
        List<ResultLines.Line> next = now.map(a -> ResultLines.of(a, unit)).orElse(List.of());
        if (!next.equals(lines)) {
            lines = next;
            redraw();
        }
    }

    /** {@return what stands there} */
    List<ResultLines.Line> lines() {
        return lines;
    }

    private int lineHeight() {
        return (int) Math.ceil(look.measure().ascent(Size.BODY) + look.measure().descent(Size.BODY)) + 6;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 220 : wHint, Math.max(12, lines.size()) * lineHeight() + 10);
    }

    private void paint(Event e) {
        int width = getClientArea().width - 2 * MARGIN;
        int y = 4;
        for (ResultLines.Line line : lines) {
            e.gc.setFont(look.font(Size.BODY, SWT.NORMAL));
            e.gc.setForeground(look.colour(Role.QUIET));
            e.gc.drawString(line.words(), MARGIN, y, true);
            e.gc.setFont(look.font(Size.BODY, line.weak() ? SWT.NORMAL : SWT.BOLD));
            e.gc.setForeground(look.colour(line.weak() ? Role.QUIET : Role.INK));
            int w = (int) look.measure().width(line.value(), Size.BODY, !line.weak());
            e.gc.drawString(line.value(), MARGIN + width - w, y, true);
            y += lineHeight();
        }
    }
}
