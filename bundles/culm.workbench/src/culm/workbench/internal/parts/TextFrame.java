package culm.workbench.internal.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.FieldFrame;

/** Words in a frame, as numbers have one: none where they may only be looked at, unless the keys go there. */
final class TextFrame extends Canvas {
    private static final int MARGIN = 5;
    private static final int ABOVE = 3;
    private final Look look;
    private final StyledText text;
    private final int lines;
    private String hint = "";

    /** @param lines how many lines of words can be seen */
    TextFrame(Composite parent, Look look, int lines) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        this.lines = lines;
        text = new StyledText(this, lines > 1 ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE);
        text.setAlwaysShowScrollBars(false);
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> {
            Rectangle area = getClientArea();
            text.setBounds(MARGIN, ABOVE, Math.max(1, area.width - 2 * MARGIN), Math.max(1, area.height - 2 * ABOVE));
        });
        addListener(SWT.MouseDown, e -> text.setFocus());
        text.addListener(SWT.FocusIn, e -> redraw());
        text.addListener(SWT.FocusOut, e -> {
            text.setSelection(0);
            redraw();
        });
        text.addListener(SWT.Paint, e -> {
            if (text.getCharCount() == 0 && text.getEditable()) {
                e.gc.setForeground(look.colour(Role.QUIET));
                e.gc.drawString(hint, 0, 0, true);
            }
        });
        text.addListener(SWT.Modify, e -> text.redraw());
        dress();
        look.onChange(this, this::dress);
    }

    /** Shows how it is written while there is nothing. */
    void hint(String now) {
        hint = now;
        text.redraw();
    }

    StyledText text() {
        return text;
    }

    /** Lets the words be looked at only, or edited again. */
    void lock(boolean now) {
        if (text.getEditable() == now) {
            text.setEditable(!now);
            dress();
        }
    }

    @Override
    public boolean setFocus() {
        return text.setFocus();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 120 : wHint, hHint == SWT.DEFAULT ? lines * text.getLineHeight() + 2 * ABOVE : hHint);
    }

    private Role ground() {
        return text.getEditable() ? Role.PANEL : Role.PAPER;
    }

    private void dress() {
        text.setFont(look.font(Size.BODY, SWT.NORMAL));
        text.setBackground(look.colour(ground()));
        text.setForeground(look.colour(Role.INK));
        text.setSelectionBackground(look.colour(Role.THREAD));
        text.setSelectionForeground(look.colour(Role.PAPER));
        setBackground(look.colour(Role.PAPER));
        redraw();
    }

    private void paint(Event e) {
        Rectangle area = getClientArea();
        e.gc.setAntialias(SWT.ON);
        e.gc.setBackground(look.colour(Role.PAPER));
        e.gc.fillRectangle(area);
        boolean focused = text.isFocusControl();
        if (!text.getEditable() && !focused) {
            return;
        }
        FieldFrame.paint(e.gc, look, area, ground(), focused ? Role.THREAD : Role.RULE, focused, false);
    }
}
