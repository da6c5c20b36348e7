package culm.workbench.internal.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import culm.blank.Assessment;
import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;
import culm.model.files.Recovery;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.editor.DesignEditor;

/**
 * What is shown at the start: what was edited and not saved when the program ended before its time; when nothing is open then, a design of
 * the studio that fits, otherwise its first one.
 */
public final class FirstDesign {
    private static final int MOST_UNSAVED = 8;
    private final Workshop workshop;

    /**
     * Chooses with the types and rules of a workshop.
     *
     * @param workshop the workshop
     */
    public FirstDesign(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Opens it in a workbench, unless something is open there.
     *
     * @param workbench the workbench
     * @param folder the studio's folder
     */
    public void openIn(IWorkbench workbench, Path folder) {
        IWorkbenchPage page = workbench.getActiveWorkbenchWindow().getActivePage();
        boolean nothing = page.getEditorReferences().length == 0;
        workshop.worker().execute(() -> {
            StudioIndex index = Studio.at(folder, workshop.files()).index();
            List<Path> unsaved = unsaved(index);
            workbench.getDisplay().asyncExec(() -> unsaved.forEach(new Opening(page)::open));
            if (nothing && unsaved.isEmpty()) {
                first(page, index);
            }
        });
    }

    private static List<Path> unsaved(StudioIndex index) {
        return index.entries().stream().map(StudioEntry::file).filter(FirstDesign::hasUnsaved).limit(MOST_UNSAVED).toList();
    }

    private static boolean hasUnsaved(Path file) {
        try {
            return Recovery.find(file).isPresent();
        } catch (IOException e) {
            ILog.get().warn("Unsaved work on " + file + " may be there and cannot be read.", e);
            return false;
        }
    }

    private void first(IWorkbenchPage page, StudioIndex index) {
        choose(index).ifPresent(file -> workshop.look().later(() -> {
            try {
                page.openEditor(new FileInput(file), DesignEditor.ID);
            } catch (PartInitException e) {
                ILog.get().error("The design cannot be opened.", e);
            }
        }));
    }

    private Optional<Path> choose(StudioIndex index) {
        List<StudioEntry> designs = index.of(FileKind.DESIGN);
        Optional<Path> fits = designs.stream().map(StudioEntry::file).filter(this::fits).findFirst();
        return fits.or(() -> designs.stream().map(StudioEntry::file).findFirst());
    }

    private boolean fits(Path file) {
        try {
            DesignedBlank blank = workshop.bridge().read(file);
            Assessment assessment = blank.assess();
            return Verdict.of(assessment, blank.judge(assessment, workshop.rules())).sign() == Verdict.Sign.FITS;
        } catch (FileProblemException e) {
            return false; // the studio's tree shows what is wrong with it
        }
    }
}
