package culm.workbench.internal.sharing;

import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;

import culm.model.problem.FileProblemException;

/**
 * What every editor of a file has in common: opening, following its changes, saving, undo, and the guard of the file.
 *
 * @param <S> the file while it is edited
 */
public abstract class FileEditor<S extends FileSession<?>> extends StudioEditor {
    private S session;
    private boolean dirty;

    /**
     * An editor.
     *
     * @param icon the name of its icon
     */
    protected FileEditor(String icon) {
        super(icon);
    }

    @Override
    protected final void open(IEditorInput input) throws PartInitException {
        Path file = input.getAdapter(Path.class);
        if (file == null) {
            throw new PartInitException("This is no file of a studio: " + input.getName());
        }
        try {
            session = read(file);
        } catch (FileProblemException e) {
            throw new PartInitException(new Status(IStatus.ERROR, getClass(), e.problem().message()));
        }
    }

    /** {@return a file, to be edited} @throws FileProblemException when it cannot be read; says why */
    protected abstract S read(Path file) throws FileProblemException;

    @Override
    public final void createPartControl(Composite parent) {
        build(parent);
        session.onChange(this::changed);
        changed();
    }

    /** Makes what stands in it. */
    protected abstract void build(Composite parent);

    /** {@return whether what stands in it is disposed} */
    protected abstract boolean isGone();

    /** Shows the file as it is now, under the name the part has. */
    protected abstract void show();

    /** {@return what guards the file} */
    public abstract GuardBars guards();

    /** Shows everything anew. */
    protected final void changed() {
        if (isGone()) {
            return;
        }
        setPartName(session.name());
        show();
        if (dirty != session.isDirty()) {
            dirty = session.isDirty();
            firePropertyChange(PROP_DIRTY);
        }
        ICommandService commands = getSite().getService(ICommandService.class);
        commands.refreshElements("org.eclipse.ui.edit.undo", null);
        commands.refreshElements("org.eclipse.ui.edit.redo", null);
    }

    /** {@return what is edited} */
    public final S session() {
        return session;
    }

    /** Says why something could not be done. */
    public final void refused(FileProblemException e) {
        MessageDialog.openError(getSite().getShell(), "That cannot be done", e.problem().message());
    }

    /** Takes over what is being typed, so that it is saved with the rest. */
    protected void settle() {
        // What is typed is taken over when its field is left.
    }

    @Override
    public final void doSave(IProgressMonitor monitor) {
        settle();
        if (!guards().save()) {
            monitor.setCanceled(true);
        }
    }

    @Override
    public final boolean isDirty() {
        return session != null && session.isDirty();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter.isInstance(session) ? adapter.cast(session) : super.getAdapter(adapter);
    }
}
