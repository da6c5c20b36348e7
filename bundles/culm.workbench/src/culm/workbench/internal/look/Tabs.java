package culm.workbench.internal.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabFolderRenderer;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

import culm.figures.Role;

/**
 * The tabs as the platform paints them, but the chosen one in this program's colours: the platform's own looks like the others on a stack that is
 * not in use, and its strip is lighter there than on the one that is, when all is dark.
 */
public final class Tabs extends CTabFolderRenderer {
    private static final int STRIP = 2;
    private final Look look;

    /**
     * Paints the tabs of a folder.
     *
     * @param parent the folder
     * @param look its colours
     */
    Tabs(CTabFolder parent, Look look) {
        super(parent);
        this.look = look;
    }

    @Override
    protected void draw(int part, int state, Rectangle bounds, GC gc) {
        if (part != PART_BODY && part != PART_BACKGROUND && belowTabs(gc.getClipping())) {
            return;
        }
        if (part < 0 || part >= parent.getItemCount() || (state & SWT.SELECTED) == 0) {
            super.draw(part, state, bounds, gc);
            return;
        }
        super.draw(part, state & ~SWT.FOREGROUND, bounds, gc);
        Rectangle tab = parent.getItem(part).getBounds();
        if (tab.width > 2) {
            Color before = gc.getBackground();
            gc.setBackground(look.colour(Role.PAPER));
            gc.fillRectangle(tab.x + 1, tab.y + 1, tab.width - 2, tab.height - 1);
            gc.setBackground(look.colour(inUse() ? Role.THREAD : Role.RULE));
            gc.fillRectangle(tab.x + 1, tab.y + 1, tab.width - 2, STRIP);
            gc.setBackground(before);
        }
        super.draw(part, state & ~SWT.BACKGROUND, bounds, gc);
    }

    /** Whenever something below changes, the folder would write its tabs again. */
    private boolean belowTabs(Rectangle changed) {
        return changed.y > parent.getTabHeight() + 1 && parent.getTabPosition() == SWT.TOP;
    }

    private boolean inUse() {
        Control control = parent.getDisplay().getFocusControl();
        while (control != null && control != parent) {
            control = control.getParent();
        }
        return control == parent;
    }
}
