package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** A word that does something: clicked, or with Space or Enter while it has the focus. */
public final class LinkText extends Canvas {
    private final Look look;
    private final Size size;
    private String words;
    private boolean chosen;
    private Runnable todo = () -> { };

    /**
     * A link.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param words what it says
     * @param size how large
     */
    public LinkText(Composite parent, Look look, String words, Size size) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        this.words = words;
        this.size = size;
        look.dress(this, Role.PAPER, Role.THREAD);
        look.onChange(this, this::redraw);
        setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND));
        addListener(SWT.Paint, this::paint);
        addListener(SWT.MouseDown, e -> setFocus());
        addListener(SWT.MouseUp, e -> {
            if (e.button == 1 && getClientArea().contains(e.x, e.y)) {
                todo.run();
            }
        });
        addListener(SWT.KeyDown, e -> {
            if (e.character == ' ' || e.character == SWT.CR) {
                todo.run();
            }
        });
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        accessible();
    }

    private void accessible() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent e) {
                e.detail = ACC.ROLE_LINK;
            }
        });
    }

    /** What to do. */
    public void onClick(Runnable what) {
        todo = what;
    }

    /** Does it, as a click does. */
    public void click() {
        todo.run();
    }

    /** Says something else. */
    public void say(String now) {
        if (!words.equals(now)) {
            words = now;
            redraw();
        }
    }

    /** Shows it as the one that is chosen among several. */
    public void chosen(boolean now) {
        chosen = now;
        redraw();
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        redraw();
    }

    /** {@return what it says} */
    public String words() {
        return words;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        double height = look.measure().line(size) + 4;
        return new Point((int) Math.ceil(look.measure().width(words, size, chosen)) + 8, (int) Math.ceil(height));
    }

    private void paint(Event e) {
        e.gc.setFont(look.font(size, chosen ? SWT.BOLD : SWT.NORMAL));
        e.gc.setForeground(look.colour(chosen ? Role.INK : isEnabled() ? Role.THREAD : Role.QUIET));
        int top = (int) (getClientArea().height - look.measure().line(size)) / 2;
        e.gc.drawString(words, 4, top, true);
        if (isFocusControl()) {
            e.gc.setForeground(look.colour(Role.THREAD));
            e.gc.drawRoundRectangle(0, 0, getClientArea().width - 1, getClientArea().height - 1, 4, 4);
        }
    }
}
