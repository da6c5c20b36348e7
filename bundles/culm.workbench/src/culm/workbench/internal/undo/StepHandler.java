package culm.workbench.internal.undo;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** One step back or forth: says of what. Always enabled: pressing its key when there is nothing must not bring up a message. */
abstract class StepHandler extends AbstractHandler implements IElementUpdater {
    private final String words;
    private final Function<UndoTarget, Optional<String>> label;
    private final Consumer<UndoTarget> step;

    StepHandler(String words, Function<UndoTarget, Optional<String>> label, Consumer<UndoTarget> step) {
        this.words = words;
        this.label = label;
        this.step = step;
    }

    @Override
    public final Object execute(ExecutionEvent event) {
        target(HandlerUtil.getActiveWorkbenchWindow(event)).ifPresent(step);
        return null;
    }

    private Optional<UndoTarget> target(IWorkbenchWindow window) {
        return UndoTargets.find(window, target -> label.apply(target).isPresent());
    }

    @Override
    public final void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setText(target(PlatformUI.getWorkbench().getActiveWorkbenchWindow()).flatMap(label).map(what -> words + ": " + what).orElse(words));
    }
}
