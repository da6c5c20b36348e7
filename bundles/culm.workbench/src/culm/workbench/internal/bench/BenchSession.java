package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.emf.common.command.BasicCommandStack;

import culm.design.edit.Edit;
import culm.model.Document;
import culm.model.files.ContentStamp;
import culm.model.files.Loaded;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.OnDisk;
import culm.workbench.internal.undo.UndoTarget;

/**
 * A batch or a log while it is edited: its document and its command stack. Every change is a command. Used on the display's
 * thread only.
 *
 * @param <D> the sort of document
 */
public final class BenchSession<D extends Document> implements UndoTarget, OnDisk {
    private final Workshop workshop;
    private final Path file;
    private final Class<D> type;
    private final Studio studio;
    private final BasicCommandStack stack = new BasicCommandStack();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Loaded<D> loaded;
    private Optional<ContentStamp> stamp;

    /**
     * Opens a document.
     *
     * @param workshop what the window works with
     * @param file its file
     * @param type what the file holds
     * @throws FileProblemException when it cannot be read; says why
     */
    public BenchSession(Workshop workshop, Path file, Class<D> type) throws FileProblemException {
        this.workshop = workshop;
        this.file = file;
        this.type = type;
        this.studio = Studio.around(file, workshop.files());
        read();
        stack.addCommandStackListener(e -> tell());
    }

    private void read() throws FileProblemException {
        loaded = workshop.files().load(file, studio.shown(file), type);
        stamp = Optional.of(loaded.stamp());
    }

    @Override
    public void reload() throws FileProblemException {
        read();
        stack.flush();
        tell();
    }

    @Override
    public void refresh() {
        tell();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /**
     * Runs something after every change.
     *
     * @param change what to run
     */
    public void onChange(Runnable change) {
        listeners.add(change);
    }

    /**
     * Changes the document.
     *
     * @param label what the change is called in the menu
     * @param change changes it
     * @throws FileProblemException when it is only to be looked at; nothing has changed then
     */
    public void change(String label, Consumer<D> change) throws FileProblemException {
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        stack.execute(Edit.of(document(), label, () -> change.accept(document())));
    }

    /**
     * Saves, unless the file has changed on disk.
     *
     * @throws FileProblemException when it cannot be saved; nothing is lost then
     */
    public void save() throws FileProblemException {
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        stamp = Optional.of(workshop.files().save(document(), file, stamp));
        stack.saveIsDone();
        tell();
    }

    @Override
    public boolean changedOnDisk() throws FileProblemException {
        return !SafeFile.stamp(file).equals(stamp);
    }

    @Override
    public void keepMine() throws FileProblemException {
        stamp = SafeFile.stamp(file);
        tell();
    }

    @Override
    public boolean isDirty() {
        return stack.isSaveNeeded();
    }

    @Override
    public Optional<String> undoLabel() {
        return stack.canUndo() ? Optional.of(stack.getUndoCommand().getLabel()) : Optional.empty();
    }

    @Override
    public Optional<String> redoLabel() {
        return stack.canRedo() ? Optional.of(stack.getRedoCommand().getLabel()) : Optional.empty();
    }

    @Override
    public void undo() {
        if (stack.canUndo()) {
            stack.undo();
        }
    }

    @Override
    public void redo() {
        if (stack.canRedo()) {
            stack.redo();
        }
    }

    /** {@return the document} */
    public D document() {
        return loaded.document();
    }

    @Override
    public Path file() {
        return file;
    }

    /** {@return the studio it belongs to} */
    public Studio studio() {
        return studio;
    }

    /** {@return what the window works with} */
    public Workshop workshop() {
        return workshop;
    }

    /** {@return why it must not be saved; empty when it may be} */
    public Optional<FileProblem> readOnly() {
        return loaded.readOnly();
    }

    /** {@return its name, or its file's} */
    public String name() {
        String name = document().getName();
        return name == null || name.isBlank() ? file.getFileName().toString() : name;
    }

    /** {@return the text that a save would write} */
    public String text() {
        return workshop.files().text(document());
    }
}
