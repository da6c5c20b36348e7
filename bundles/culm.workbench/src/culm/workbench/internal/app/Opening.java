package culm.workbench.internal.app;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import culm.model.studio.FileKind;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.parts.PartsEditor;

/** Opens the files of a studio in their editors. */
public final class Opening {
    private final IWorkbenchPage page;

    /**
     * Opens in a page.
     *
     * @param page the page
     */
    public Opening(IWorkbenchPage page) {
        this.page = page;
    }

    /**
     * Opens a file; says so when it cannot be opened.
     *
     * @param file the file
     * @return its editor, if it opened
     */
    public Optional<IEditorPart> open(Path file) {
        return open(file, true);
    }

    /**
     * Opens a file, or only lays it on top; says so when it cannot be opened.
     *
     * @param file the file
     * @param active whether it has the focus from now on
     * @return its editor, if it opened
     */
    public Optional<IEditorPart> open(Path file, boolean active) {
        Optional<String> editor = FileKind.of(file).flatMap(Opening::editor);
        if (editor.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(page.openEditor(new FileInput(file), editor.get(), active));
        } catch (PartInitException e) {
            MessageDialog.openError(page.getWorkbenchWindow().getShell(), "This cannot be opened", e.getMessage());
            return Optional.empty();
        }
    }

    private static Optional<String> editor(FileKind kind) {
        return switch (kind) {
            case DESIGN -> Optional.of(DesignEditor.ID);
            case BATCH -> Optional.of(BatchEditor.ID);
            case LOG -> Optional.of(LogEditor.ID);
            case PARTS -> Optional.of(PartsEditor.ID);
            case LIMITS -> Optional.empty();
        };
    }

    /**
     * The editor in which a file is open.
     *
     * @param file the file
     * @return the editor, if there is one
     */
    public Optional<IEditorPart> editorOf(Path file) {
        for (IEditorReference reference : page.findEditors(new FileInput(file), null, IWorkbenchPage.MATCH_INPUT)) {
            return Optional.ofNullable(reference.getEditor(false));
        }
        return Optional.empty();
    }
}
