package culm.workbench.internal.app;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPathEditorInput;
import org.eclipse.ui.IPersistableElement;

/** A file that is edited; remembered when the window closes. */
public final class FileInput implements IPathEditorInput, IPersistableElement {
    private static final String PATH = "path";
    private final Path file;
    private final boolean remembered;

    /**
     * The input for a file.
     *
     * @param file its path
     */
    public FileInput(Path file) {
        this(file, false);
    }

    private FileInput(Path file, boolean remembered) {
        this.file = file.toAbsolutePath().normalize();
        this.remembered = remembered;
    }

    /** {@return whether it was open when the window was last closed} */
    public boolean remembered() {
        return remembered;
    }

    /** {@return the file, absolute} */
    public Path file() {
        return file;
    }

    @Override
    public IPath getPath() {
        return IPath.fromPath(file);
    }

    @Override
    public boolean exists() {
        return Files.exists(file);
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return file.getFileName().toString();
    }

    @Override
    public String getToolTipText() {
        return file.toString();
    }

    @Override
    public IPersistableElement getPersistable() {
        return exists() ? this : null;
    }

    @Override
    public void saveState(IMemento memento) {
        memento.putString(PATH, file.toString());
    }

    @Override
    public String getFactoryId() {
        return "culm.workbench.designInput"; // its old name: saved layouts ask for it
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Path.class ? adapter.cast(file) : null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FileInput input && file.equals(input.file);
    }

    @Override
    public int hashCode() {
        return file.hashCode();
    }

    /** Makes inputs again that were remembered. */
    public static final class Factory implements IElementFactory {
        @Override
        public FileInput createElement(IMemento memento) {
            String path = memento.getString(PATH);
            return path == null ? null : new FileInput(Path.of(path), true);
        }
    }
}
