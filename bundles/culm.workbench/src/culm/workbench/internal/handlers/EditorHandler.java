package culm.workbench.internal.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.editor.DesignEditor;

/** Does one {@link EditorTask} in the active editor; which one stands behind the class in plugin.xml. */
public final class EditorHandler extends AbstractHandler implements IExecutableExtension {
    private EditorTask task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = EditorTask.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof DesignEditor editor) {
            task.run(editor);
        }
        return null;
    }
}
