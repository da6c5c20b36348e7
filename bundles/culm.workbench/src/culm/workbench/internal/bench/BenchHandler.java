package culm.workbench.internal.bench;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

/** Does one {@link BenchTask}; which one stands behind the class in plugin.xml. */
public final class BenchHandler extends AbstractHandler implements IExecutableExtension {
    private BenchTask task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = BenchTask.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        task.run(new BenchActions(HandlerUtil.getActiveWorkbenchWindow(event)));
        return null;
    }
}
