package culm.workbench.internal.sharing;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import culm.figures.Role;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.undo.UndoTarget;
import culm.workbench.internal.undo.UndoWords;
import culm.workbench.internal.widgets.SoonAfter;
import culm.workbench.internal.widgets.Typing;

/**
 * What every editor of a file has in common: opening, following its changes, saving, undo, and the guard of the file.
 *
 * @param <S> the file while it is edited
 */
public abstract class FileEditor<S extends FileSession<?>> extends StudioEditor {
    private Optional<LateRead<S>> late = Optional.empty();
    private SoonAfter<Composite> place;
    private S session;
    private boolean dirty;
    private int steps = -1;

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
        if (waits()) {
            late = Optional.of(new LateRead<>(workshop().worker(), () -> read(file)));
            setPartName(nameOfLastTime(input));
            return;
        }
        try {
            session = read(file);
        } catch (FileProblemException e) {
            throw new PartInitException(new Status(IStatus.ERROR, getClass(), e.problem().message()));
        }
    }

    /** Only what is read knows its name; until then the tab keeps the one it had. */
    private String nameOfLastTime(IEditorInput input) {
        return Stream.of(getSite().getPage().findEditors(input, getSite().getId(), IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID))
                .map(IEditorReference::getPartName).filter(name -> name != null && !name.isEmpty()).findFirst().orElseGet(input::getName);
    }

    /** {@return whether it is made only after all around it was painted, and its file read beside that} */
    protected boolean waits() {
        return false;
    }

    /**
     * Reads on the window's thread, or on the worker's for an editor that waits.
     *
     * @return a file, to be edited
     * @throws FileProblemException when it cannot be read; says why
     */
    protected abstract S read(Path file) throws FileProblemException;

    @Override
    public final void createPartControl(Composite parent) {
        workshop().look().clear(parent);
        if (late.isEmpty()) {
            make(parent);
            return;
        }
        place = new SoonAfter<>(parent, this::makeLate, () -> {
            if (place.isFocusControl()) {
                setFocus();
            }
        });
        workshop().look().dress(place, Role.PAPER, Role.INK);
    }

    private Composite makeLate(Composite parent) {
        Composite all = new Composite(parent, SWT.NONE);
        all.setLayout(new FillLayout());
        try {
            session = late.orElseThrow().get();
            make(all);
        } catch (FileProblemException e) {
            workshop().look().dress(all, Role.PAPER, Role.INK);
            workshop().look().later(() -> {
                getSite().getPage().closeEditor(this, false);
                workshop().notices().cannotOpen(getEditorInput().getAdapter(Path.class), e.problem());
            });
        }
        return all;
    }

    private void make(Composite parent) {
        build(parent);
        workshop().notices().settled(session.file());
        session.onChange(this::changed);
        Listener typed = e -> sayDirty();
        for (int event : new int[] { SWT.Modify, SWT.KeyUp, SWT.FocusOut }) {
            parent.getDisplay().addFilter(event, typed);
            parent.addListener(SWT.Dispose, e -> parent.getDisplay().removeFilter(event, typed));
        }
        changed();
    }

    /** {@return whether what stands in it is made} */
    protected final boolean isMade() {
        return session != null;
    }

    /** What stands in it is made, unless it is already. */
    protected final void makeNow() {
        if (!isMade()) {
            place.get();
        }
    }

    /** Until what stands in it is made, its place has the focus, and gives it on. */
    protected final void focusPlace() {
        place.setFocus();
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
        sayDirty();
        if (steps != session.steps()) { // not while something is only shown: they stand in menus
            steps = session.steps();
            UndoWords.refresh(getSite());
        }
    }

    private void sayDirty() {
        if (dirty != isDirty()) {
            dirty = isDirty();
            firePropertyChange(PROP_DIRTY);
        }
    }

    /** {@return what is typed in this editor and not entered yet} */
    private Optional<Typing> typing() {
        Display display = Display.getCurrent();
        return display == null ? Optional.empty() : Typing.of(display.getFocusControl()).filter(t -> getSite().getPage().getActivePart() == this);
    }

    /** {@return what is edited} */
    public final S session() {
        makeNow();
        return session;
    }

    /** Says why something could not be done. */
    public final void refused(FileProblemException e) {
        MessageDialog.openError(getSite().getShell(), "That cannot be done", e.problem().message());
    }

    /** Takes over what is being typed, so that it is saved with the rest. */
    protected void settle() {
        typing().ifPresent(t -> t.settle().run());
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
        return session != null && (session.isDirty() || typing().isPresent());
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (FileSession.class.isAssignableFrom(adapter)) {
            makeNow();
        }
        if (adapter == UndoTarget.class && session != null) {
            return adapter.cast(new DoneFromHere(session, workshop().studio().steps()));
        }
        return adapter.isInstance(session) ? adapter.cast(session) : super.getAdapter(adapter);
    }
}
