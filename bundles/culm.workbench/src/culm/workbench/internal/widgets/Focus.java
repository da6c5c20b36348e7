package culm.workbench.internal.widgets;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

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
        if (!in(part)) {
            otherwise.run();
        }
    }

    /** {@return whether something in it has the focus} @param part what holds it */
    static boolean in(Composite part) {
        for (Control c = part.getDisplay().getFocusControl(); c != null; c = c.getParent()) {
            if (c == part) {
                return true;
            }
        }
        return false;
    }

    /** Gives the focus to the part that is worked in, when what had it is gone: no key would do anything else. */
    static void back() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window != null && window.getActivePage().getActivePart() != null && window.getShell().getDisplay().getFocusControl() == null) {
            window.getActivePage().getActivePart().setFocus();
        }
    }
}
