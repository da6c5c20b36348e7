package culm.workbench.internal.undo;

import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.services.IServiceLocator;

/** What stands beside Undo and Redo in menus and under the pointer. */
public final class UndoWords {
    private UndoWords() {
    }

    /**
     * They follow what was done.
     *
     * @param site of a part, or a window
     */
    public static void refresh(IServiceLocator site) {
        ICommandService commands = site.getService(ICommandService.class);
        commands.refreshElements("org.eclipse.ui.edit.undo", null);
        commands.refreshElements("org.eclipse.ui.edit.redo", null);
    }
}
