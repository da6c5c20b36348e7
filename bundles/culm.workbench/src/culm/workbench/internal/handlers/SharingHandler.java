package culm.workbench.internal.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.sharing.SharingActions;

/** Does one {@link SharingTask}; which one stands behind the class in plugin.xml. */
public final class SharingHandler extends AbstractHandler implements IExecutableExtension {
    private SharingTask task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = SharingTask.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        task.run(new SharingActions(HandlerUtil.getActiveWorkbenchWindow(event)));
        return null;
    }
}
