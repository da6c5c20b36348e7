package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** Rows that are painted one below the other: how they scroll, take the focus, follow the theme and are spoken. */
public abstract class RowsList extends Canvas {
    /** A scroll bar does not fit into less, and the toolkit complains; it happens for a moment while the editor is laid out, points. */
    private static final int LEAST_WITH_BAR = 60;
    private final Look look;
    private int scrolled;
    private int high;

    /**
     * Without rows.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    protected RowsList(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL);
        this.look = look;
        ScrollBar bar = getVerticalBar();
        bar.setVisible(false); // before anyone listens: it changes the room, and the rows are not made yet
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> layOut());
        addListener(SWT.MouseDown, e -> {
            setFocus();
            down(e);
        });
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        bar.addListener(SWT.Selection, e -> {
            scrolled = bar.getSelection();
            redraw();
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = spoken();
            }
        });
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        toBe(height);
        super.setBounds(x, y, width, height);
    }

    @Override
    public void setBounds(Rectangle now) {
        setBounds(now.x, now.y, now.width, now.height);
    }

    @Override
    public void setSize(int width, int height) {
        toBe(height);
        super.setSize(width, height);
    }

    @Override
    public void setSize(Point now) {
        setSize(now.x, now.y);
    }

    /** Before it is made smaller, not after: the toolkit would squeeze the bar first. */
    private void toBe(int height) {
        high = height;
        if (height < LEAST_WITH_BAR) {
            getVerticalBar().setVisible(false);
        }
    }

    /** {@return what is said of it to those who do not see it} */
    public abstract String spoken();

    /** Paints what can be seen, {@link #scrolled} pixels further up. */
    protected abstract void paint(GC gc);

    /** {@return how high everything is, in pixels} */
    protected abstract int whole();

    /** {@return how far one step scrolls, in pixels} */
    protected abstract int step();

    /** The mouse is pressed; it has the focus by then. */
    protected abstract void down(Event e);

    /** A key is pressed. */
    protected abstract void key(Event e);

    /** {@return colours and fonts} */
    protected final Look look() {
        return look;
    }

    /** {@return how many pixels are scrolled out above} */
    protected final int scrolled() {
        return scrolled;
    }

    /** There is more or less room for the rows. */
    protected void layOut() {
        bar();
    }

    /** Fits the scroll bar to the rows there are now. */
    protected final void bar() {
        int whole = whole();
        int height = Math.max(1, getClientArea().height);
        ScrollBar bar = getVerticalBar();
        bar.setVisible(whole > height && high >= LEAST_WITH_BAR);
        bar.setValues(Math.min(scrolled, Math.max(0, whole - height)), 0, Math.max(1, whole), Math.min(height, Math.max(1, whole)), step(), height);
        scrolled = whole > height ? bar.getSelection() : 0;
    }

    /** Scrolls until it can be seen from top to bottom, counted from the first row. */
    protected final void reveal(int top, int bottom) {
        int height = getClientArea().height;
        if (getVerticalBar().getVisible() && (top < scrolled || bottom > scrolled + height)) {
            getVerticalBar().setSelection(top < scrolled ? top : bottom - height);
            scrolled = getVerticalBar().getSelection();
        }
    }
}
