package culm.workbench.internal.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

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

import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.changes.ChangesPage;
import culm.workbench.internal.explore.ExplorePage;
import culm.workbench.internal.export.ExportDialog;
import culm.workbench.internal.export.FigureClipboard;
import culm.workbench.internal.export.FigurePrinter;
import culm.workbench.internal.fit.FitDialog;
import culm.workbench.internal.form.ParameterForm;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.limits.LimitsDialog;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.plugins.WriteDialog;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.undo.UndoTarget;

/** The editor for a design. */
public final class DesignEditor extends EditorPart {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.designEditor";

    /** What stands beside the form. */
    public enum Page {
        /** The reed with its findings. */
        REED("Reed"),
        /** More graphs. */
        GRAPHS("Graphs"),
        /** What changes against a blank that works. */
        CHANGES("What changes if"),
        /** Variants, what matters, how many will work, the best choice. */
        EXPLORE("Explore");

        private final String words;

        Page(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private final PointerHeight pointer = new PointerHeight();
    private Workshop workshop;
    private DesignSession session;
    private EditorBody body;
    private boolean dirty;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleImage(Icons.descriptor("design").createImage());
        workshop = Workshop.of(site);
        Path file = input.getAdapter(Path.class);
        if (file == null) {
            throw new PartInitException("This is no file of a studio: " + input.getName());
        }
        try {
            session = new DesignSession(workshop, file);
        } catch (FileProblemException e) {
            throw new PartInitException(new Status(IStatus.ERROR, DesignEditor.class, e.problem().message()));
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new EditorBody(parent, workshop, session, pointer, this::refused);
        body.reed().findings().onApply(this::apply);
        body.reed().findings().onSelect(this::select);
        session.onChange(this::show);
        show();
    }

    private void show() {
        if (body.isDisposed()) {
            return;
        }
        String given = session.design().getName();
        String name = given == null || given.isBlank() ? getEditorInput().getName() : given;
        setPartName(name);
        body.refresh(name);
        if (dirty != session.isDirty()) {
            dirty = session.isDirty();
            firePropertyChange(PROP_DIRTY);
        }
        ICommandService commands = getSite().getService(ICommandService.class);
        commands.refreshElements("org.eclipse.ui.edit.undo", null);
        commands.refreshElements("org.eclipse.ui.edit.redo", null);
    }

    private void select(Finding finding) {
        getEditorSite().getActionBars().getStatusLineManager().setMessage(finding.severity().word() + ": " + finding.text());
        body.reed().reed().mark(finding.path());
    }

    private void apply(Fix fix) {
        try {
            session.change(edits -> edits.apply(fix), "");
        } catch (FileProblemException e) {
            refused(e);
        }
    }

    private void refused(FileProblemException e) {
        MessageDialog.openError(getSite().getShell(), "That cannot be done", e.problem().message());
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
        body.form().focusFirst();
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
        if (adapter == UndoTarget.class || adapter == DesignSession.class) {
            return adapter.cast(session);
        }
        return super.getAdapter(adapter);
    }

    /** {@return the form} */
    public ParameterForm form() {
        return body.form();
    }

    /** {@return what guards the file} */
    public GuardBars guards() {
        return body.guards();
    }

    /** {@return the page of what changes if} */
    public ChangesPage changes() {
        return body.changes();
    }

    /** {@return the page of exploring} */
    public ExplorePage explore() {
        return body.explore();
    }

    /** {@return the height the drawings point at} */
    public PointerHeight pointer() {
        return pointer;
    }

    /** Shows a page. */
    public void showPage(Page page) {
        body.show(page);
    }

    /** {@return the page that is shown} */
    public Page page() {
        return body.page();
    }

    /** Puts the focus onto the marks of the ruler. */
    public void focusMarks() {
        body.show(Page.REED);
        body.reed().reed().setFocus();
    }

    /** Chooses the next finding. */
    public void nextFinding() {
        body.show(Page.REED);
        body.reed().findings().next();
    }

    /** Does what the chosen finding proposes, or the first one that has a proposal. */
    public void applyFix() {
        if (!body.reed().findings().applySelected()) {
            session.shown().findings().stream().flatMap(f -> f.fix().stream()).findFirst().ifPresent(this::apply);
        }
    }

    /** Keeps the section where it is, or lets it follow the pointer. */
    public void togglePin() {
        pointer.pin(pointer.isPinned() ? OptionalDouble.empty() : pointer.height());
    }

    /** Shows the reed larger or smaller; 0 shows the whole. */
    public void zoom(double factor) {
        body.show(Page.REED);
        body.reed().reed().zoom(factor, pointer.height().orElseGet(() -> session.shown().assessment().map(a -> a.sidesCloseAt().orElse(0)).orElse(0.0)));
    }

    /** {@return every drawing of this editor, the one with the focus first} */
    public List<Figure> figures() {
        return body.figures();
    }

    /** Copies the drawing with the focus as a picture. */
    public void copyPicture() {
        new FigureClipboard(workshop.look()).picture(figures().get(0));
    }

    /** Copies the numbers of the drawing with the focus as a table. */
    public void copyTable() {
        new FigureClipboard(workshop.look()).table(figures().get(0));
    }

    /** Asks which drawing to write where, and writes it. */
    public void export() {
        new ExportDialog(getSite().getShell(), workshop, getPartName(), figures(), session).open();
    }

    /** Asks as what to write the numbers and findings, and writes them. */
    public void writeAs() {
        new WriteDialog(getSite().getShell(), workshop, getPartName(), session.shown()).open();
    }

    /** Prints a drawing on paper, true to scale. */
    public void print() {
        new FigurePrinter(getSite().getShell(), workshop.look()).print(getPartName(), figures().get(0));
    }

    /** Starts from a blank that works. */
    public void fit() {
        new FitDialog(getSite().getShell(), workshop, session).open();
    }

    /** Opens my limits. */
    public void limits() {
        new LimitsDialog(getSite().getShell(), workshop, session.studio(), session::refresh).open();
    }
}
