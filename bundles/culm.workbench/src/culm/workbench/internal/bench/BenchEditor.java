package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.part.EditorPart;

import culm.model.Document;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.undo.UndoTarget;

/**
 * What the editors of a batch and of a log have in common: opening, saving, undo, and the guard of the file.
 *
 * @param <D> the sort of document
 */
public abstract class BenchEditor<D extends Document> extends EditorPart {
    private final Class<D> type;
    private final String icon;
    /** Of its own, since a large batch takes a while and no design should wait for it. */
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Culm bench");
        thread.setDaemon(true);
        return thread;
    });
    private Workshop workshop;
    private BenchSession<D> session;
    private GuardBars guards;
    private Composite all;
    private boolean dirty;

    /**
     * An editor.
     *
     * @param type what its files hold
     * @param icon the name of its icon
     */
    protected BenchEditor(Class<D> type, String icon) {
        this.type = type;
        this.icon = icon;
    }

    @Override
    public final void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleImage(Icons.descriptor(icon).createImage());
        workshop = Workshop.of(site);
        Path file = input.getAdapter(Path.class);
        if (file == null) {
            throw new PartInitException("This is no file of a studio: " + input.getName());
        }
        try {
            session = new BenchSession<>(workshop, file, type);
        } catch (FileProblemException e) {
            throw new PartInitException(new Status(IStatus.ERROR, BenchEditor.class, e.problem().message()));
        }
    }

    @Override
    public final void createPartControl(Composite parent) {
        all = new Composite(parent, SWT.NONE);
        build(all);
        session.onChange(this::changed);
        changed();
    }

    /** Makes what stands in it, {@link #guards} among it. */
    protected abstract void build(Composite parent);

    /** Makes the lines that say something about the file. @param parent where they go, a grid of two columns */
    protected final void guards(Composite parent) {
        guards = new GuardBars(parent, session, () -> "", this::refused);
        guards.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
    }

    /** Shows the document as it is now. */
    protected abstract void show();

    private void changed() {
        if (all.isDisposed()) {
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
    public final BenchSession<D> session() {
        return session;
    }

    /** {@return what the window works with} */
    protected final Workshop workshop() {
        return workshop;
    }

    /** {@return what computes off the display's thread; the latest question wins} */
    protected final <T> Recompute<T> recompute(Consumer<T> publish) {
        return new Recompute<>(worker, workshop.look()::later, publish);
    }

    /** Says why something could not be done. */
    protected final void refused(FileProblemException e) {
        MessageDialog.openError(getSite().getShell(), "That cannot be done", e.problem().message());
    }

    /** Takes over what is being typed, so that it is saved with the rest. */
    protected abstract void settle();

    @Override
    public final void doSave(IProgressMonitor monitor) {
        settle();
        if (!guards.save()) {
            monitor.setCanceled(true);
        }
    }

    @Override
    public final void doSaveAs() {
        throw new UnsupportedOperationException("a copy is made in the studio");
    }

    @Override
    public final boolean isDirty() {
        return session != null && session.isDirty();
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void dispose() {
        worker.shutdownNow();
        if (getTitleImage() != null && session != null) {
            getTitleImage().dispose();
        }
        super.dispose();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == UndoTarget.class || adapter == BenchSession.class) {
            return adapter.cast(session);
        }
        return super.getAdapter(adapter);
    }
}
