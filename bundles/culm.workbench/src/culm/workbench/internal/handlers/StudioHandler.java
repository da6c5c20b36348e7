package culm.workbench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.studio.StudioActions;

/** Does one {@link StudioTask}. */
public final class StudioHandler extends TaskHandler<StudioTask> {
    /** A handler. */
    public StudioHandler() {
        super(StudioTask.class);
    }

    @Override
    protected void run(StudioTask task, ExecutionEvent event) {
        task.run(new StudioActions(HandlerUtil.getActiveWorkbenchWindow(event)));
    }
}
