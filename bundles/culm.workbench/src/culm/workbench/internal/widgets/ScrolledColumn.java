package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Scrollable;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** What may be higher than its place, on paper: scrolled by wheel and bar, and by Page Up and Page Down wherever the focus is in the same editor or dialog. */
public final class ScrolledColumn extends ScrolledComposite {
    private static final int STEP = 30;
    private final Composite column;

    /**
     * An empty column.
     *
     * @param parent where it goes
     * @param look colours
     * @param layout how the column lays out its children
     */
    public ScrolledColumn(Composite parent, Look look, GridLayout layout) {
        super(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        setExpandHorizontal(true);
        getVerticalBar().setIncrement(STEP);
        look.dress(this, Role.PAPER, Role.INK);
        column = new Composite(this, SWT.NONE);
        column.setLayout(layout);
        look.dress(column, Role.PAPER, Role.INK);
        setContent(column);
        addListener(SWT.Resize, e -> fit());
        Listener keys = this::key;
        getDisplay().addFilter(SWT.KeyDown, keys);
        addListener(SWT.Dispose, e -> getDisplay().removeFilter(SWT.KeyDown, keys));
    }

    /** {@return where its children go} */
    public Composite column() {
        return column;
    }

    /** Lays out anew; to be called when a child wants another size. */
    public void fit() {
        int width = getClientArea().width;
        column.setSize(column.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT));
        column.layout(true, true);
    }

    private void key(Event e) {
        boolean down = e.keyCode == SWT.PAGE_DOWN;
        if ((down || e.keyCode == SWT.PAGE_UP) && e.stateMask == 0 && isVisible() && isBeside(getDisplay().getFocusControl())) {
            int page = Math.max(STEP, getClientArea().height - STEP);
            setOrigin(getOrigin().x, getOrigin().y + (down ? page : -page));
            e.doit = false;
        }
    }

    /** Whether the focus is in the same part of the window, and in nothing else there that can scroll. */
    private boolean isBeside(Control focused) {
        for (Control c = focused; c != null; c = c.getParent()) {
            if (c == this) {
                return true;
            }
            if (c instanceof Scrollable other && other.getVerticalBar() != null && other.getVerticalBar().isVisible()) {
                return false;
            }
            if (holds(c)) {
                return true;
            }
            if (c.getParent() instanceof CTabFolder) {
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
}
