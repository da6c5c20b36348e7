package culm.workbench.internal.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.studio.StudioActions;

/** Does one {@link StudioTask}; which one stands behind the class in plugin.xml. */
public final class StudioHandler extends AbstractHandler implements IExecutableExtension {
    private StudioTask task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = StudioTask.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        task.run(new StudioActions(HandlerUtil.getActiveWorkbenchWindow(event)));
        return null;
    }
}
