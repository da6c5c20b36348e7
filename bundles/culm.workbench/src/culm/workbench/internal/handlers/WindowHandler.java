package culm.workbench.internal.handlers;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

import culm.workbench.internal.app.Workshop;

/** Does one {@link WindowTask} and shows in the menu which one holds. */
public final class WindowHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {
    private WindowTask task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = WindowTask.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        task.run(Workshop.of(HandlerUtil.getActiveWorkbenchWindow(event)));
        ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
        for (WindowTask each : WindowTask.values()) {
            commands.refreshElements("culm.window." + each.name().toLowerCase(java.util.Locale.ROOT), null);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setChecked(task.chosen(Workshop.of(PlatformUI.getWorkbench())));
    }
}
