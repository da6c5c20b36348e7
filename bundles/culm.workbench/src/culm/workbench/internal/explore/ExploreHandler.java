package culm.workbench.internal.explore;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.editor.DesignEditor;

/** Asks one {@link ExplorePage.Question} of the design in the active editor; which one stands behind the class in plugin.xml. */
public final class ExploreHandler extends AbstractHandler implements IExecutableExtension {
    private ExplorePage.Question question;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        question = ExplorePage.Question.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof DesignEditor editor) {
            editor.showPage(DesignEditor.Page.EXPLORE);
            editor.explore().ask(question);
        }
        return null;
    }
}
