package culm.workbench.internal.explore;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.handlers.TaskHandler;

/** Asks one {@link ExplorePage.Question} of the design in the active editor. */
public final class ExploreHandler extends TaskHandler<ExplorePage.Question> {
    /** A handler. */
    public ExploreHandler() {
        super(ExplorePage.Question.class);
    }

    @Override
    protected void run(ExplorePage.Question question, ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof DesignEditor editor) {
            editor.showPage(DesignEditor.Page.EXPLORE);
            editor.explore().ask(question);
        }
    }
}
