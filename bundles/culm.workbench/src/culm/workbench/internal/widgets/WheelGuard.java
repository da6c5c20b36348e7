package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** The wheel scrolls the page where a list to choose from comes under the pointer: the toolkit would choose another value there, and nobody would have meant it. */
public final class WheelGuard {
    private WheelGuard() {
    }

    /** From now on, in every window. */
    public static void install(Display display) {
        display.addFilter(SWT.MouseVerticalWheel, WheelGuard::wheel);
    }

    private static void wheel(Event e) {
        if (e.widget instanceof Combo combo) {
            e.doit = false;
            scroll(combo, e.count);
        }
    }

    private static void scroll(Combo combo, int lines) {
        for (Composite above = combo.getParent(); above != null; above = above.getParent()) {
            if (above instanceof ScrolledComposite page) {
                Point origin = page.getOrigin();
                page.setOrigin(origin.x, origin.y - lines * page.getVerticalBar().getIncrement());
                page.getVerticalBar().notifyListeners(SWT.Selection, new Event());
                return;
            }
        }
    }
}
