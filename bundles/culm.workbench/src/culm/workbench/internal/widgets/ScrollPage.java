package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Scrollable;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/**
 * Controls one below the other, each as wide as the page and as high as it has to be; it scrolls when they are higher: by
 * wheel and bar, and by Page Up and Page Down wherever the focus is in the same editor or dialog.
 */
public final class ScrollPage extends ScrolledComposite {
    private static final int STEP = 24;
    private final Composite content;

    /**
     * An empty page.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public ScrollPage(Composite parent, Look look) {
        super(parent, SWT.V_SCROLL);
        content = new Composite(this, SWT.NONE);
        look.dress(this, Role.PAPER, Role.INK);
        look.dress(content, Role.PAPER, Role.INK);
        content.setLayout(new Column());
        setContent(content);
        setExpandHorizontal(true);
        getVerticalBar().setIncrement(STEP);
        addListener(SWT.Resize, e -> fit());
        Listener keys = this::key;
        getDisplay().addFilter(SWT.KeyDown, keys);
        addListener(SWT.Dispose, e -> getDisplay().removeFilter(SWT.KeyDown, keys));
    }

    /** {@return where the controls go} */
    public Composite content() {
        return content;
    }

    /** Lays the controls out anew after their content has changed. */
    public void fit() {
        if (isDisposed()) {
            return;
        }
        int width = getClientArea().width;
        place();
        if (getClientArea().width != width) { // the scroll bar came or went
            place();
        }
        getVerticalBar().setPageIncrement(Math.max(STEP, getClientArea().height - STEP));
    }

    private void place() {
        Rectangle area = getClientArea();
        Point wanted = content.computeSize(area.width, SWT.DEFAULT);
        content.setSize(area.width, Math.max(area.height, wanted.y));
        content.layout(true, true);
    }

    private void key(Event e) {
        boolean down = e.keyCode == SWT.PAGE_DOWN;
        if ((down || e.keyCode == SWT.PAGE_UP) && e.stateMask == 0 && isVisible() && isBeside(getDisplay().getFocusControl())) {
            int page = getVerticalBar().getPageIncrement();
            setOrigin(getOrigin().x, getOrigin().y + (down ? page : -page));
            e.doit = false;
        }
    }

    /** Whether the focus is in the same part of the window, and in nothing else there that can scroll. */
    private boolean isBeside(Control focused) {
        for (Control c = focused; c != null && !(c instanceof CTabFolder); c = c.getParent()) {
            if (c == this || holds(c)) {
                return true;
            }
            if (c instanceof Scrollable other && other.getVerticalBar() != null && other.getVerticalBar().isVisible()) {
                return false;
            }
        }
        return false;
    }

    private boolean holds(Control other) {
        for (Composite c = getParent(); c != null && !(c instanceof CTabFolder); c = c.getParent()) {
            if (c == other) {
                return true;
            }
        }
        return false;
    }

    private static final class Column extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            int width = wHint == SWT.DEFAULT ? 400 : wHint;
            int height = 0;
            for (Control child : composite.getChildren()) {
                height += child.computeSize(width, SWT.DEFAULT).y;
            }
            return new Point(width, height);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            int width = composite.getClientArea().width;
            int y = 0;
            for (Control child : composite.getChildren()) {
                int height = child.computeSize(width, SWT.DEFAULT).y;
                child.setBounds(0, y, width, height);
                y += height;
            }
        }
    }
}
