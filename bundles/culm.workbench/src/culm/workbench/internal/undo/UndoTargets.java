package culm.workbench.internal.undo;

import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;

/** Finds whose undo is meant: the focused control's when it has something to take back, otherwise the active part's. */
final class UndoTargets {
    private UndoTargets() {
    }

    static Optional<UndoTarget> find(IWorkbenchWindow window, Predicate<UndoTarget> wanted) {
        for (Control c = Display.getCurrent().getFocusControl(); c != null; c = c.getParent()) {
            if (c.getData(UndoTarget.KEY) instanceof UndoTarget target && wanted.test(target)) {
                return Optional.of(target);
            }
        }
        Shell active = Display.getCurrent().getActiveShell();
        if (window != null && active != null && active != window.getShell()) {
            return Optional.empty(); // a dialog: what is behind it is not meant
        }
        IWorkbenchPart part = window == null || window.getActivePage() == null ? null
                : window.getActivePage().getActivePart();
        return Optional.ofNullable(Adapters.adapt(part, UndoTarget.class)).filter(wanted);
    }
}
