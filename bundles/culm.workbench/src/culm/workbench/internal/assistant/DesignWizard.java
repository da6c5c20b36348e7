package culm.workbench.internal.assistant;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;

import culm.model.Design;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.studio.NewFile;

/** A new design in two steps: where to start from, then the parts or the numbers. */
public final class DesignWizard extends Wizard {
    private final IWorkbenchWindow window;
    private final Workshop workshop;
    private final Studio studio;
    private final StartPage start;
    private final PartsPage parts;
    private final CaliperPage caliper;

    DesignWizard(IWorkbenchWindow window, Workshop workshop) {
        this.window = window;
        this.workshop = workshop;
        this.studio = workshop.studio().studio().orElseThrow();
        this.start = new StartPage(workshop, opened(window));
        this.parts = new PartsPage(workshop);
        this.caliper = new CaliperPage(workshop);
        setWindowTitle("New design");
        setForcePreviousAndNextButtons(true);
    }

    /** The file of the editor that is looked at. */
    private static Optional<Path> opened(IWorkbenchWindow window) {
        return Optional.ofNullable(window.getActivePage().getActiveEditor()).map(IEditorPart::getEditorInput)
                .filter(FileInput.class::isInstance).map(input -> ((FileInput) input).file());
    }

    @Override
    public void addPages() {
        addPage(start);
        addPage(parts);
        addPage(caliper);
    }

    @Override
    public void createPageControls(Composite parent) {
        // Each page is made when it is first shown, and the window grows for it: else all would be as high as the longest.
    }

    @Override
    public IWizardPage getNextPage(IWizardPage page) {
        if (page != start) {
            return null;
        }
        return switch (start.from()) {
            case BLANK -> null;
            case PARTS -> parts;
            case CALIPER -> caliper;
        };
    }

    @Override
    public boolean canFinish() {
        IWizardPage second = getNextPage(start);
        return start.isPageComplete() && (second == null || second.isPageComplete() && getContainer().getCurrentPage() == second);
    }

    @Override
    public boolean performFinish() {
        String name = start.name();
        NewFile target = NewFile.design(workshop, studio, name);
        try {
            Design design = design(name, target.file());
            target.write(design);
            open(target.file());
            return true;
        } catch (FileProblemException e) {
            MessageDialog.openError(getShell(), "The design was not made", e.problem().message());
            return false;
        }
    }

    private Design design(String name, Path file) throws FileProblemException {
        DesignMaker maker = new DesignMaker(workshop, studio);
        return switch (start.from()) {
            case BLANK -> maker.like(start.chosen(), name);
            case PARTS -> maker.ofParts(name, file, parts.links(file));
            case CALIPER -> maker.measured(name, caliper.measured());
        };
    }

    private void open(Path file) {
        Optional<IEditorPart> editor = new Opening(window.getActivePage()).open(file);
        if (start.tellTurns() && editor.orElse(null) instanceof DesignEditor design) {
            window.getShell().getDisplay().asyncExec(design::fit);
        }
    }
}
