package culm.workbench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.sharing.SharingActions;

/** Does one {@link SharingTask}. */
public final class SharingHandler extends TaskHandler<SharingTask> {
    /** A handler. */
    public SharingHandler() {
        super(SharingTask.class);
    }

    @Override
    protected void run(SharingTask task, ExecutionEvent event) {
        task.run(new SharingActions(HandlerUtil.getActiveWorkbenchWindow(event)));
    }
}
