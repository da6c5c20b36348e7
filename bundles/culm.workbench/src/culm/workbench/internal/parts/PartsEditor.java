package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.part.EditorPart;

import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.undo.UndoTarget;

/** The editor for a file of parts. */
public final class PartsEditor extends EditorPart {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.partsEditor";
    private Workshop workshop;
    private PartsSession session;
    private PartsBody body;
    private boolean dirty;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleImage(Icons.descriptor("parts").createImage());
        workshop = Workshop.of(site);
        Path file = input.getAdapter(Path.class);
        if (file == null) {
            throw new PartInitException("This is no file of a studio: " + input.getName());
        }
        try {
            session = new PartsSession(workshop, file);
        } catch (FileProblemException e) {
            throw new PartInitException(new Status(IStatus.ERROR, PartsEditor.class, e.problem().message()));
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new PartsBody(parent, session, this::refused, file -> new Opening(getSite().getPage()).open(file));
        Runnable end = workshop.studio().onChange(files -> show());
        parent.addDisposeListener(e -> end.run());
        session.onChange(this::show);
        show();
    }

    private void show() {
        if (body == null || body.isDisposed()) {
            return;
        }
        String name = session.document().getName();
        setPartName(name == null || name.isBlank() ? getEditorInput().getName() : name);
        body.show(getPartName());
        if (dirty != session.isDirty()) {
            dirty = session.isDirty();
            firePropertyChange(PROP_DIRTY);
        }
        ICommandService commands = getSite().getService(ICommandService.class);
        commands.refreshElements("org.eclipse.ui.edit.undo", null);
        commands.refreshElements("org.eclipse.ui.edit.redo", null);
    }

    private void refused(FileProblemException e) {
        MessageDialog.openError(getSite().getShell(), "That cannot be done", e.problem().message());
    }

    /** {@return why parts of a file cannot be computed here; empty when they can} */
    static String missing(PartsSession session) {
        return session.document().getParts().stream().map(p -> PartPlan.missing(p, session.workshop().bridge().profiles())).filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** {@return what is in the studio now} */
    static StudioIndex index(PartsSession session) {
        Optional<StudioIndex> known = session.workshop().studio().studio().filter(s -> s.root().equals(session.studio().root()))
                .flatMap(s -> session.workshop().studio().index());
        return known.orElseGet(() -> session.studio().index());
    }

    /** Chooses a part. @param id its id */
    public void choose(String id) {
        session.part(id).ifPresent(body::choose);
    }

    /** {@return the part that is chosen, if any} */
    public Optional<Part> chosen() {
        return body.chosen();
    }

    /** {@return the parts that are listed} */
    public List<Part> parts() {
        return List.copyOf(session.document().getParts());
    }

    /** {@return what guards the file} */
    public GuardBars guards() {
        return body.guards();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (!body.guards().save()) {
            monitor.setCanceled(true);
        }
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a copy is made in the studio");
    }

    @Override
    public boolean isDirty() {
        return session != null && session.isDirty();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void setFocus() {
        body.focusList();
    }

    @Override
    public void dispose() {
        if (getTitleImage() != null && body != null) {
            getTitleImage().dispose();
        }
        super.dispose();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == UndoTarget.class || adapter == PartsSession.class) {
            return adapter.cast(session);
        }
        return super.getAdapter(adapter);
    }
}
