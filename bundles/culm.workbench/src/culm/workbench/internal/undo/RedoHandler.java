package culm.workbench.internal.undo;

import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Edit, Redo: says what it does again. Always enabled: pressing its key when there is nothing must not bring up a message. */
public final class RedoHandler extends AbstractHandler implements IElementUpdater {

    @Override
    public Object execute(ExecutionEvent event) {
        UndoTargets.find(HandlerUtil.getActiveWorkbenchWindow(event), RedoHandler::has).ifPresent(UndoTarget::redo);
        return null;
    }

    private static boolean has(UndoTarget target) {
        return target.redoLabel().isPresent();
    }

    private static Optional<UndoTarget> now() {
        return UndoTargets.find(PlatformUI.getWorkbench().getActiveWorkbenchWindow(), RedoHandler::has);
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setText(now().flatMap(UndoTarget::redoLabel).map(label -> "&Redo: " + label).orElse("&Redo"));
    }
}
