package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;

import culm.design.parts.Replacement;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.StudioIndex.Held;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.studio.FileStep;

/** Writes a part's replacement into designs, as one step of the studio that can be taken back. */
record ReplaceStep(Workshop workshop, Replacement replacement, Held from, Held to) {
    void run(List<Path> designs) throws FileProblemException {
        FileStep step = new FileStep("replace " + from.part().title() + " by " + to.part().title()).about(from.file().file());
        for (Path design : designs) {
            requireSaved(design);
            step.put(design, replacement.content(design));
        }
        workshop.studio().steps().run(step);
    }

    /** What is edited and not saved would meet the file that is written here. */
    private static void requireSaved(Path design) throws FileProblemException {
        Optional<IEditorPart> editor = new Opening(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage()).editorOf(design);
        if (editor.filter(IEditorPart::isDirty).isPresent()) {
            throw new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, design.getFileName().toString(), 0, "",
                    "it is open and has changes that are not saved; save it first, nothing was done"));
        }
    }
}
