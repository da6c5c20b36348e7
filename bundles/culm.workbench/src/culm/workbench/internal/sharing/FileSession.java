package culm.workbench.internal.sharing;

import java.nio.file.Path;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.design.ProfileUpgrade;
import culm.design.compare.ThreeWay;
import culm.design.edit.Edit;
import culm.design.edit.Edits;
import culm.model.Document;
import culm.model.files.ContentStamp;
import culm.model.files.Loaded;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.undo.UndoTarget;

/**
 * One file of a studio while it is edited: its document, what it held when it was read or last saved, and its command stack. Every
 * change is a command. Used on the display's thread only.
 *
 * @param <D> the sort of document
 */
public abstract class FileSession<D extends Document> implements UndoTarget {
    /** Makes one change; it may find that a linked part is missing. */
    @FunctionalInterface
    public interface Change {
        /**
         * Makes the command.
         *
         * @param edits makes commands for what is edited
         * @return the command
         * @throws FileProblemException when a linked part cannot be found
         */
        Edit with(Edits edits) throws FileProblemException;
    }

    /** What the file held when it was read or last saved; both change together. */
    private record Base(Document document, Optional<ContentStamp> stamp) {
    }

    private final Workshop workshop;
    private final Path file;
    private final Class<D> type;
    private final Studio studio;
    private final BasicCommandStack stack = new BasicCommandStack();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private int steps;
    private long changedAt = System.nanoTime();
    private Loaded<D> loaded;
    private Base base;
    private Runnable baseMoved = () -> { };
    private Optional<FileProblem> lookOnly = Optional.empty();

    /**
     * Reads a file.
     *
     * @param workshop what the window works with
     * @param file the file
     * @param type what it holds
     * @throws FileProblemException when it cannot be read; says why
     */
    protected FileSession(Workshop workshop, Path file, Class<D> type) throws FileProblemException {
        this.workshop = workshop;
        this.file = file;
        this.type = type;
        this.studio = Studio.around(file, workshop.files());
        read();
        stack.addCommandStackListener(this::stackChanged);
    }

    private void read() throws FileProblemException {
        loaded = load();
        base = new Base(EcoreUtil.copy(loaded.document()), Optional.of(loaded.stamp()));
    }

    /** As it is on disk; profiles of an older version of their type are brought up to today's. */
    private Loaded<D> load() throws FileProblemException {
        Loaded<D> now = workshop.files().load(file, studio.shown(file), type);
        ProfileUpgrade.apply(now.document(), workshop.bridge().profiles());
        return now;
    }

    private void stackChanged(EventObject event) {
        steps++;
        changedAt = System.nanoTime();
        forgetPreview();
        refresh();
    }

    /** Another document object takes the place of the one before. */
    protected abstract void documentChanged();

    /** What is only shown and not yet a command becomes one. @throws FileProblemException as the command */
    protected void settle() throws FileProblemException {
    }

    /** What is only shown is given up. */
    protected void forgetPreview() {
    }

    /** Reads what the file depends on again, and shows everything anew. */
    public abstract void refresh();

    /** Tells everyone who shows it. */
    protected final void tell() {
        listeners.forEach(Runnable::run);
    }

    /**
     * Runs something after every change of the document, of what is shown, or of what can be taken back.
     *
     * @param change what to run
     */
    public final void onChange(Runnable change) {
        listeners.add(change);
    }

    /** Throws when it may only be looked at. */
    protected final void requireWritable() throws FileProblemException {
        if (readOnly().isPresent()) {
            throw new FileProblemException(readOnly().get());
        }
    }

    /** Does one change. @param label what it is called in the menu; empty to keep its own */
    protected final void change(Edits edits, Change change, String label) throws FileProblemException {
        requireWritable();
        settle();
        Edit edit = change.with(edits);
        if (!label.isEmpty()) {
            edit.setLabel(label);
        }
        execute(edit);
    }

    /** Does a command. */
    protected final void execute(Command command) {
        stack.execute(command);
    }

    /**
     * Takes the document as it is on disk now; what was changed here is given up, and nothing can be taken back.
     *
     * @throws FileProblemException when it cannot be read; then nothing has changed
     */
    public final void reload() throws FileProblemException {
        read();
        forgetPreview();
        documentChanged();
        stack.flush(); // which tells, and all is refreshed
    }

    /**
     * Saves, unless the file has changed on disk.
     *
     * @throws FileProblemException when it cannot be saved; nothing is lost then
     */
    public final void save() throws FileProblemException {
        settle();
        requireWritable();
        ContentStamp stamp = workshop.files().save(document(), file, base.stamp());
        base = new Base(EcoreUtil.copy(document()), Optional.of(stamp));
        stack.saveIsDone();
        tell();
    }

    /** {@return whether the file holds something else than it did when it was read or last saved}
     * @throws FileProblemException when that cannot be told */
    public final boolean changedOnDisk() throws FileProblemException {
        return !SafeFile.stamp(file).equals(base.stamp());
    }

    /**
     * Keeps what is edited here although the file has changed: the next save goes over it, and the file before is kept as
     * the backup.
     *
     * @throws FileProblemException when the file cannot be read
     */
    public final void keepMine() throws FileProblemException {
        base = new Base(base.document(), SafeFile.stamp(file));
        tell();
    }

    /** What others did to the file beside what was done here. */
    public final class Meeting {
        private final ThreeWay comparison;
        private final Loaded<D> theirs;

        private Meeting(ThreeWay comparison, Loaded<D> theirs) {
            this.comparison = comparison;
            this.theirs = theirs;
        }

        /** {@return what differs} */
        public ThreeWay comparison() {
            return comparison;
        }

        /**
         * Takes what was put together, as one command; the next save goes over what the others wrote. Taken back, the file counts
         * as changed outside again.
         *
         * @param merged of {@link ThreeWay#merged}
         */
        public void take(Document merged) throws FileProblemException {
            FileSession.this.take(theirs, merged, "put together with theirs");
        }
    }

    private void base(Base now) {
        base = now;
        baseMoved.run();
    }

    /** What is to be run when the file, seen from here, is no longer changed outside, or is so again. */
    final void onBaseMoved(Runnable todo) {
        baseMoved = todo;
    }

    private void take(Loaded<D> theirs, Document content, String label) throws FileProblemException {
        requireWritable();
        Base before = base;
        Base after = new Base(EcoreUtil.copy(theirs.document()), Optional.of(theirs.stamp()));
        stack.execute(new Taken(Edits.become(document(), content, label), () -> base(after), () -> base(before)));
    }

    /**
     * Takes what others wrote into the file in place of what was done here, as one command: taken back, it is edited here again, and
     * the file counts as changed outside.
     *
     * @throws FileProblemException when the file cannot be read; then nothing has changed
     */
    public final void takeTheirs() throws FileProblemException {
        Loaded<D> theirs = load();
        if (theirs.readOnly().isPresent()) {
            reload(); // a newer program wrote it: there are no commands for that
            return;
        }
        forgetPreview();
        take(theirs, theirs.document(), "take theirs");
        stack.saveIsDone();
        tell();
    }

    /**
     * Compares with what others wrote into the file.
     *
     * @return both versions
     * @throws FileProblemException when the file is gone or cannot be read any more
     */
    public final Meeting meet() throws FileProblemException {
        settle();
        Loaded<D> theirs = load();
        return new Meeting(ThreeWay.compare(base.document(), document(), theirs.document(), workshop.bridge().profiles()), theirs);
    }

    /**
     * Takes another content, as one command.
     *
     * @param content the bytes of a whole file of this sort
     * @param label what the command is called in the menu
     * @throws FileProblemException when it cannot be read, or the file may only be looked at
     */
    public final void become(byte[] content, String label) throws FileProblemException {
        requireWritable();
        D other = workshop.files().read(content, studio.shown(file), type).document();
        stack.execute(Edits.become(document(), other, label));
    }

    /** {@return another number after each command, undo and redo} */
    public final int steps() {
        return steps;
    }

    /** {@return when the last command, undo or redo was, as {@link System#nanoTime} tells; at first, when it was opened} */
    public final long changedAt() {
        return changedAt;
    }

    /** {@return whether there are changes that are not saved} */
    public final boolean isDirty() {
        return stack.isSaveNeeded();
    }

    @Override
    public final Optional<String> undoLabel() {
        return stack.canUndo() ? Optional.of(stack.getUndoCommand().getLabel()) : Optional.empty();
    }

    @Override
    public final Optional<String> redoLabel() {
        return stack.canRedo() ? Optional.of(stack.getRedoCommand().getLabel()) : Optional.empty();
    }

    @Override
    public void undo() {
        if (stack.canUndo()) {
            stack.undo();
        }
    }

    @Override
    public final void redo() {
        if (stack.canRedo()) {
            stack.redo();
        }
    }

    /** {@return the command an undo would take back; null when there is none} */
    protected final Command lastCommand() {
        return stack.canUndo() ? stack.getUndoCommand() : null;
    }

    /** Takes the last command back. */
    protected final void undoCommand() {
        stack.undo();
    }

    /** {@return the document} */
    public final D document() {
        return loaded.document();
    }

    /** {@return the file} */
    public final Path file() {
        return file;
    }

    /** {@return what the document is called, or its file} */
    public final String name() {
        String name = document().getName();
        return name == null || name.isBlank() ? file.getFileName().toString() : name;
    }

    /** {@return the file's name for messages} */
    public final String shownName() {
        return loaded.file();
    }

    /** {@return the studio it belongs to} */
    public final Studio studio() {
        return studio;
    }

    /** {@return what the window works with} */
    public final Workshop workshop() {
        return workshop;
    }

    /** {@return why it must not be changed; empty when it may be} */
    public final Optional<FileProblem> readOnly() {
        return loaded.readOnly().or(() -> lookOnly);
    }

    /** {@return whether a newer program wrote it, so that it can only be looked at} */
    public final Optional<FileProblem> newer() {
        return loaded.readOnly();
    }

    /**
     * Lets it be looked at only, or changed again.
     *
     * @param why the reason; empty to let it be changed
     */
    public final void lookOnly(Optional<FileProblem> why) {
        lookOnly = why;
        tell();
    }

    /** {@return the text that a save would write} */
    public final String text() {
        return workshop.files().text(document());
    }

    /** {@return the bytes that a save would write} */
    public final byte[] bytes() {
        return workshop.files().bytes(document());
    }
}
