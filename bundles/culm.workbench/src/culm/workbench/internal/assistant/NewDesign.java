package culm.workbench.internal.assistant;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;

import culm.workbench.internal.app.Workshop;

/** Opens the assistant for a new design. */
public final class NewDesign {
    private final IWorkbenchWindow window;
    private final Workshop workshop;

    /**
     * The assistant of a window.
     *
     * @param window the window
     * @param workshop what it works with
     */
    public NewDesign(IWorkbenchWindow window, Workshop workshop) {
        this.window = window;
        this.workshop = workshop;
    }

    /** Opens it. */
    public void open() {
        WizardDialog dialog = new WizardDialog(window.getShell(), new DesignWizard(window, workshop));
        dialog.setMinimumPageSize(460, 320);
        dialog.open();
    }
}
