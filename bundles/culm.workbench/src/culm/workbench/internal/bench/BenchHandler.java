package culm.workbench.internal.bench;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.handlers.TaskHandler;

/** Does one {@link BenchTask}. */
public final class BenchHandler extends TaskHandler<BenchTask> {
    /** A handler. */
    public BenchHandler() {
        super(BenchTask.class);
    }

    @Override
    protected void run(BenchTask task, ExecutionEvent event) {
        task.run(new BenchActions(HandlerUtil.getActiveWorkbenchWindow(event)));
    }
}
