package culm.workbench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.parts.PartsEditor;

/** Does one {@link EditorTask} in the active editor. */
public final class EditorHandler extends TaskHandler<EditorTask> {
    /** A handler. */
    public EditorHandler() {
        super(EditorTask.class);
    }

    @Override
    protected void run(EditorTask task, ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof DesignEditor editor) {
            task.run(editor);
        } else if (HandlerUtil.getActiveEditor(event) instanceof PartsEditor editor) {
            task.run(editor);
        }
    }
}
