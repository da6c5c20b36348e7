package culm.workbench.internal.history;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.PartInitException;

import culm.workbench.internal.sharing.StudioEditor;

/** The history of a studio. */
public final class HistoryEditor extends StudioEditor {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.historyEditor";
    private HistoryInput input;
    private HistoryBody body;

    /** An editor. */
    public HistoryEditor() {
        super("history");
    }

    @Override
    protected void open(IEditorInput given) throws PartInitException {
        if (!(given instanceof HistoryInput history)) {
            throw new PartInitException("This is no studio: " + given.getName());
        }
        input = history;
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new HistoryBody(parent, workshop(), input.studio(), getSite().getPage());
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
    public void setFocus() {
        body.setFocus();
    }
}
