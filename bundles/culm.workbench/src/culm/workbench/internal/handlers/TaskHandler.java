package culm.workbench.internal.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/**
 * Does one of several tasks; which one stands in plugin.xml by its name, after the colon behind the class.
 *
 * @param <T> the tasks
 */
public abstract class TaskHandler<T extends Enum<T>> extends AbstractHandler implements IExecutableExtension {
    private final Class<T> tasks;
    private T task;

    /**
     * A handler.
     *
     * @param tasks what it can do
     */
    protected TaskHandler(Class<T> tasks) {
        this.tasks = tasks;
    }

    @Override
    public final void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = Enum.valueOf(tasks, (String) data);
    }

    @Override
    public final Object execute(ExecutionEvent event) {
        run(task, event);
        return null;
    }

    /** Does a task. */
    protected abstract void run(T task, ExecutionEvent event);
}
