package culm.workbench.internal.pair;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * Two designs that are compared.
 *
 * @param first the one on the left
 * @param second the one on the right
 */
public record PairInput(Path first, Path second) implements IEditorInput {
    @Override
    public boolean exists() {
        return Files.exists(first) && Files.exists(second);
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return first.getFileName() + " and " + second.getFileName();
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return getName();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
