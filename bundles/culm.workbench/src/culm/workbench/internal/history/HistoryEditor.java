package culm.workbench.internal.history;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;

import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.look.Icons;

/** The history of a studio. */
public final class HistoryEditor extends EditorPart {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.historyEditor";
    private HistoryInput input;
    private HistoryBody body;

    @Override
    public void init(IEditorSite site, IEditorInput given) throws PartInitException {
        if (!(given instanceof HistoryInput history)) {
            throw new PartInitException("This is no studio: " + given.getName());
        }
        input = history;
        setSite(site);
        setInput(given);
        setPartName(given.getName());
        setTitleImage(Icons.descriptor("history").createImage());
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new HistoryBody(parent, Workshop.of(getSite()), input.studio(), getSite().getPage());
    }

    /** {@return whether something is still being done} */
    public boolean busy() {
        return body.busy();
    }

    /** Chooses a row: what is not kept yet, if anything, and then the versions. */
    public void choose(int row) {
        body.choose(row);
    }

    /** {@return how many rows there are} */
    public int rows() {
        return body.rows();
    }

    /** {@return what is said of the chosen row} */
    public String told() {
        return body.told();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        monitor.done();
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("there is nothing to save");
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void setFocus() {
        body.setFocus();
    }

    @Override
    public void dispose() {
        if (getTitleImage() != null && body != null) {
            getTitleImage().dispose();
        }
        super.dispose();
    }
}
