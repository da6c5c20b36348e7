package culm.workbench.internal.sharing;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;

import culm.workbench.internal.app.Workshop;

/** What every editor of something in the studio has in common: its title, and that nothing is saved unless it says so. */
public abstract class StudioEditor extends EditorPart {
    private final String icon;
    private Workshop workshop;

    /**
     * An editor.
     *
     * @param icon the name of its icon
     */
    protected StudioEditor(String icon) {
        this.icon = icon;
    }

    @Override
    public final void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        workshop = Workshop.of(site);
        setTitleImage(workshop.icons().get(icon));
        open(input);
    }

    /**
     * Takes what is to be shown.
     *
     * @param input what was asked for
     * @throws PartInitException when this is nothing for this editor; says why
     */
    protected abstract void open(IEditorInput input) throws PartInitException;

    /** {@return what the window works with} */
    protected final Workshop workshop() {
        return workshop;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        monitor.done();
    }

    @Override
    public final void doSaveAs() {
        throw new UnsupportedOperationException("a copy is made in the studio");
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }
}
