package culm.workbench.internal.history;

import java.nio.file.Path;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * The history of a studio.
 *
 * @param studio its folder
 */
public record HistoryInput(Path studio) implements IEditorInput {
    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return "History of " + studio.getFileName();
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return studio.toString();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
