package culm.workbench.internal.handlers;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

import culm.workbench.internal.app.Workshop;

/** Does one {@link WindowTask} and shows in the menu which one holds. */
public final class WindowHandler extends AbstractHandler implements IElementUpdater {
    private final IWorkbench workbench;
    private final WindowTask task;

    private WindowHandler(IWorkbench workbench, WindowTask task) {
        this.workbench = workbench;
        this.task = task;
    }

    /**
     * Makes all of them known to a workbench. Not declared in plugin.xml: a declared one is loaded when it is first used, and until then the
     * menu would not show which one holds.
     *
     * @param workbench the workbench
     */
    public static void activateIn(IWorkbench workbench) {
        IHandlerService handlers = workbench.getService(IHandlerService.class);
        for (WindowTask task : WindowTask.values()) {
            handlers.activateHandler(task.command(), new WindowHandler(workbench, task));
        }
    }

    @Override
    public Object execute(ExecutionEvent event) {
        task.run(Workshop.of(workbench));
        ICommandService commands = workbench.getService(ICommandService.class);
        for (WindowTask each : WindowTask.values()) {
            commands.refreshElements(each.command(), null);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setChecked(task.chosen(Workshop.of(workbench)));
    }
}
