package culm.workbench.internal.changes;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** The numbers of a comparison; those that differ are bold and have a sign before them. */
final class ComparisonCanvas extends Canvas {
    private static final int FIRST = 210;
    private static final int COLUMN = 130;
    private static final int TOP = 6;
    private static final int RULE = 9;
    private final Look look;
    private Comparison shown = Comparison.NONE;

    ComparisonCanvas(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, this::paint);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = shown.sentence();
            }
        });
    }

    void show(Comparison now) {
        shown = now;
        redraw();
    }

    private int line() {
        return (int) Math.ceil(look.measure().line(Size.BODY)) + 7;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(FIRST + 3 * COLUMN + 20, TOP + (shown.lines().size() + 1) * line() + RULE);
    }

    private void paint(Event e) {
        GC gc = e.gc;
        int y = TOP;
        gc.setFont(look.font(Size.SMALL, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        right(gc, shown.baseName(), 1, y);
        right(gc, Comparison.NOW, 2, y);
        if (shown.tried()) {
            right(gc, Comparison.TRIED, 3, y);
        }
        y += line();
        boolean inputs = false;
        for (Comparison.Line line : shown.lines()) {
            if (line.input() && !inputs) {
                inputs = true;
                gc.setForeground(look.colour(Role.RULE));
                gc.drawLine(0, y + 2, FIRST + (shown.tried() ? 3 : 2) * COLUMN, y + 2);
                y += RULE;
            }
            line(gc, line, y);
            y += line();
        }
    }

    private void line(GC gc, Comparison.Line line, int y) {
        gc.setFont(look.font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        gc.drawString(Clip.to(line.words(), look.measure(), Size.BODY, FIRST - 20), 14, y, true);
        if (line.differs()) {
            gc.setBackground(look.colour(Role.THREAD));
            gc.fillPolygon(new int[] { 0, y + 4, 6, y + 8, 0, y + 12 });
        }
        gc.setForeground(look.colour(Role.INK));
        right(gc, line.base(), 1, y);
        gc.setFont(look.font(Size.BODY, line.base().equals(line.now()) ? SWT.NORMAL : SWT.BOLD));
        right(gc, line.now(), 2, y);
        gc.setFont(look.font(Size.BODY, line.now().equals(line.tried()) ? SWT.NORMAL : SWT.BOLD));
        right(gc, line.tried(), 3, y);
    }

    private static void right(GC gc, String text, int column, int y) {
        gc.drawString(text, FIRST + column * COLUMN - gc.stringExtent(text).x, y, true);
    }
}
