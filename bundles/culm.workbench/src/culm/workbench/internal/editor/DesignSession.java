package culm.workbench.internal.editor;

import java.nio.file.Path;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

import culm.design.DesignedBlank;
import culm.design.edit.Edit;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.model.Design;
import culm.model.files.ContentStamp;
import culm.model.files.Loaded;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.undo.UndoTarget;

/**
 * One design while it is edited: its document, its command stack, and what is shown of it. Every change is a command;
 * a preview changes only what is shown. Used on the display's thread only.
 */
public final class DesignSession implements UndoTarget {
    /** Makes one change; it may find that a linked part is missing. */
    @FunctionalInterface
    public interface Change {
        /**
         * Makes the command.
         *
         * @param edits makes commands for this design
         * @return the command
         * @throws FileProblemException when a linked part cannot be found
         */
        Edit with(Edits edits) throws FileProblemException;
    }

    private final Workshop workshop;
    private final Path file;
    private final Studio studio;
    private Loaded<Design> loaded;
    private Edits edits;
    private final BasicCommandStack stack = new BasicCommandStack();
    private final Recompute<Shown> recompute;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Gesture gesture = new Gesture(this);
    private Optional<ContentStamp> stamp;
    private Shown shown = Shown.NOTHING;
    private Optional<DesignedBlank> blank = Optional.empty();

    /**
     * Opens a design.
     *
     * @param workshop what the window works with
     * @param file the design's file
     * @throws FileProblemException when it cannot be read; says why
     */
    public DesignSession(Workshop workshop, Path file) throws FileProblemException {
        this.workshop = workshop;
        this.file = file;
        this.studio = Studio.around(file, workshop.files());
        read();
        this.recompute = new Recompute<>(workshop.worker(), workshop.look().display()::asyncExec, this::publish);
        stack.addCommandStackListener(this::stackChanged);
        refresh();
    }

    private void read() throws FileProblemException {
        loaded = workshop.files().load(file, studio.shown(file), Design.class);
        stamp = Optional.of(loaded.stamp());
        edits = Edits.of(design(), PartResolver.in(studio, file, loaded.file()), new java.security.SecureRandom());
    }

    /**
     * Takes the design as it is on disk now; what was changed here is given up, and nothing can be taken back.
     *
     * @throws FileProblemException when it cannot be read; then nothing has changed
     */
    public void reload() throws FileProblemException {
        read();
        gesture.forgetPreview();
        stack.flush();
        refresh();
    }

    private void stackChanged(EventObject event) {
        gesture.forgetPreview();
        refresh();
    }

    /** Reads parts and limits again and computes everything anew. */
    public void refresh() {
        try {
            blank = Optional.of(workshop.bridge().draft(design(), file, loaded.file(), studio));
        } catch (FileProblemException e) {
            blank = Optional.empty();
            recompute.ask(() -> Shown.of(e.problems()));
            tell();
            return;
        }
        compute(blank.get());
        tell();
    }

    /** Shows a blank that differs from the design. */
    void compute(DesignedBlank other) {
        recompute.ask(() -> Shown.of(other, workshop.rules()));
    }

    private void publish(Shown now) {
        shown = now;
        tell();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /**
     * Runs something after every change of the design, of what is shown, or of what can be taken back.
     *
     * @param change what to run
     */
    public void onChange(Runnable change) {
        listeners.add(change);
    }

    /**
     * Changes the design.
     *
     * @param change makes the command
     * @param label what it is called in the menu; empty to keep its own
     * @throws FileProblemException when a linked part cannot be found or the design is read-only; nothing has changed then
     */
    public void change(Change change, String label) throws FileProblemException {
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        gesture.settle();
        Edit edit = change.with(edits);
        if (!label.isEmpty()) {
            edit.setLabel(label);
        }
        stack.execute(edit);
    }

    /**
     * Makes several changes as one command.
     *
     * @param changes make the commands, in order
     * @param label what they are called together in the menu
     * @throws FileProblemException as {@link #change}; nothing has changed then
     */
    public void changeAll(List<Change> changes, String label) throws FileProblemException {
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        gesture.settle();
        CompoundCommand all = new CompoundCommand(label);
        for (Change change : changes) {
            all.append(change.with(edits));
        }
        stack.execute(all);
    }

    /**
     * Saves, unless the file has changed on disk.
     *
     * @throws FileProblemException when it cannot be saved; nothing is lost then
     */
    public void save() throws FileProblemException {
        gesture.settle();
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        stamp = Optional.of(workshop.files().save(design(), file, stamp));
        stack.saveIsDone();
        tell();
    }

    /** {@return whether the file holds something else than it did when it was read or last saved}
     * @throws FileProblemException when that cannot be told */
    public boolean changedOnDisk() throws FileProblemException {
        return !SafeFile.stamp(file).equals(stamp);
    }

    /**
     * Keeps what is edited here although the file has changed: the next save goes over it, and the file before is kept as
     * the backup.
     *
     * @throws FileProblemException when the file cannot be read
     */
    public void keepMine() throws FileProblemException {
        stamp = SafeFile.stamp(file);
        tell();
    }

    /** {@return whether there are changes that are not saved} */
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
        if (gesture.active()) {
            gesture.giveBack();
        } else if (stack.canUndo()) {
            stack.undo();
        }
    }

    @Override
    public void redo() {
        if (stack.canRedo()) {
            stack.redo();
        }
    }

    /** The command an undo would take back; null when there is none. */
    Command lastCommand() {
        return stack.canUndo() ? stack.getUndoCommand() : null;
    }

    /** Takes the last command back. */
    void undoCommand() {
        stack.undo();
    }

    /** {@return moving a value by hand} */
    public Gesture gesture() {
        return gesture;
    }

    /** {@return what is shown now} */
    public Shown shown() {
        return shown;
    }

    /** {@return the design as it stands, whatever is shown; empty when it cannot be told} */
    public Optional<DesignedBlank> blank() {
        return blank;
    }

    /** {@return whether what is shown will still change} */
    public boolean pending() {
        return recompute.pending();
    }

    /** {@return the document} */
    public Design design() {
        return loaded.document();
    }

    /** {@return the design's file} */
    public Path file() {
        return file;
    }

    /** {@return the studio it belongs to} */
    public Studio studio() {
        return studio;
    }

    /** {@return why it must not be saved; empty when it may be} */
    public Optional<FileProblem> readOnly() {
        return loaded.readOnly();
    }

    /** {@return whether a change at this path would first copy a linked part into the design} */
    public boolean copiesLinkedPart(String path) {
        return edits.copiesLinkedPart(path);
    }

    /** {@return the text that a save would write} */
    public String text() {
        return workshop.files().text(design());
    }
}
