package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

import culm.design.edit.Edit;
import culm.model.Document;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.FileSession;

/**
 * A batch or a log while it is edited.
 *
 * @param <D> the sort of document
 */
public final class BenchSession<D extends Document> extends FileSession<D> {
    /**
     * Opens a document.
     *
     * @param workshop what the window works with
     * @param file its file
     * @param type what the file holds
     * @throws FileProblemException when it cannot be read; says why
     */
    public BenchSession(Workshop workshop, Path file, Class<D> type) throws FileProblemException {
        super(workshop, file, type);
    }

    @Override
    protected void documentChanged() {
        // Nothing here holds on to a part of it.
    }

    @Override
    public void refresh() {
        tell();
    }

    /**
     * Changes the document.
     *
     * @param label what the change is called in the menu
     * @param change changes it
     * @throws FileProblemException when it is only to be looked at; nothing has changed then
     */
    public void change(String label, Consumer<D> change) throws FileProblemException {
        requireWritable();
        execute(Edit.of(document(), label, () -> change.accept(document())));
    }

    /** Changes the document, as {@link #change}. @return why it cannot be changed; empty when it was */
    public Optional<String> tryChange(String label, Consumer<D> change) {
        try {
            change(label, change);
            return Optional.empty();
        } catch (FileProblemException e) {
            return Optional.of(e.problem().sentence());
        }
    }
}
