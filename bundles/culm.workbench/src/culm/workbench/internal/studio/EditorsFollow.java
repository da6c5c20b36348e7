package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.undo.UndoWords;

/** Editors go along when their files get another path, and close when they go. What is edited and not saved is never lost by that. */
final class EditorsFollow implements StudioSteps.Following {
    private final IWorkbenchPage page;
    private final Consumer<Path> there;

    /** Follows in a page. @param there told which file is to be chosen after a step */
    EditorsFollow(IWorkbenchPage page, Consumer<Path> there) {
        this.page = page;
        this.there = there;
    }

    @Override
    public void ahead(List<Path> gone) throws FileProblemException {
        for (Path file : gone) {
            if (new Opening(page).editorOf(file).filter(IEditorPart::isDirty).isPresent()) {
                throw new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, file.getFileName().toString(), 0, "",
                        "it has changes that are not saved; nothing was done"));
            }
        }
    }

    @Override
    public void done(FileStep step, boolean back) {
        Optional<FileStep.Move> move = step.moved(back);
        for (Path file : step.gone(back)) {
            IEditorReference[] open = page.findEditors(new FileInput(file), null, IWorkbenchPage.MATCH_INPUT);
            IEditorPart top = page.getActiveEditor();
            boolean onTop = top != null && Arrays.stream(open).anyMatch(e -> e.getEditor(false) == top);
            boolean active = onTop && page.getActivePart() == top;
            if (open.length > 0 && page.closeEditors(open, false)) {
                move.filter(m -> m.from().equals(file)).ifPresent(m -> new Opening(page).open(m.to(), active));
                if (!onTop && top != null) {
                    page.bringToTop(top);
                }
            }
        }
        UndoWords.refresh(page.getWorkbenchWindow());
        step.come(back).ifPresent(there);
    }
}
