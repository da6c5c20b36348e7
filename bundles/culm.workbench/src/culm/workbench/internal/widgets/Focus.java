package culm.workbench.internal.widgets;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Where the keys go. */
public final class Focus {
    private Focus() {
    }

    /**
     * Gives a part the focus, unless the Tab key or a click has just put it into one of its controls: that one keeps it.
     *
     * @param part all of the part
     * @param otherwise puts it where it begins
     */
    public static void into(Composite part, Runnable otherwise) {
        for (Control c = part.getDisplay().getFocusControl(); c != null; c = c.getParent()) {
            if (c == part) {
                return;
            }
        }
        otherwise.run();
    }
}
