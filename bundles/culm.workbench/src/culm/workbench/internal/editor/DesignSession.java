package culm.workbench.internal.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

import culm.design.DesignedBlank;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.model.Design;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.FileSession;

/**
 * One design while it is edited: its document, its command stack, and what is shown of it. Every change is a command;
 * a preview changes only what is shown. Used on the display's thread only.
 */
public final class DesignSession extends FileSession<Design> {
    private final Recompute<Shown> recompute;
    private final Gesture gesture = new Gesture(this);
    private Supplier<Optional<LaidOut.Wanted>> ahead = Optional::empty;
    private Edits edits;
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
        super(workshop, file, Design.class);
        documentChanged();
        this.recompute = new Recompute<>(workshop.worker(), workshop.look()::later, this::publish);
        refresh();
    }

    @Override
    protected void documentChanged() {
        edits = Edits.of(design(), PartResolver.in(studio(), file(), shownName()), new java.security.SecureRandom());
    }

    @Override
    protected void settle() throws FileProblemException {
        gesture.settle();
    }

    @Override
    protected void forgetPreview() {
        gesture.forgetPreview();
    }

    @Override
    public void refresh() {
        try {
            blank = Optional.of(workshop().bridge().draft(design(), file(), shownName(), studio()));
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
        Optional<LaidOut.Wanted> wanted = ahead.get();
        recompute.ask(() -> Shown.of(other, workshop().rules(), workshop().extensions().findings(), workshop().look().besides(), wanted));
    }

    /** Asks at each change what can be laid out beside computing. */
    void layOutAhead(Supplier<Optional<LaidOut.Wanted>> what) {
        ahead = what;
    }

    private void publish(Shown now) {
        shown = now;
        tell();
    }

    /**
     * Changes the design.
     *
     * @param change makes the command
     * @param label what it is called in the menu; empty to keep its own
     * @throws FileProblemException when a linked part cannot be found or the design is read-only; nothing has changed then
     */
    public void change(Change change, String label) throws FileProblemException {
        change(edits, change, label);
    }

    /** Throws when the design may only be looked at. @throws FileProblemException says why */
    public void requireChange() throws FileProblemException {
        requireWritable();
    }

    /**
     * Makes several changes as one command.
     *
     * @param changes make the commands, in order
     * @param label what they are called together in the menu
     * @throws FileProblemException as {@link #change}; nothing has changed then
     */
    public void changeAll(List<Change> changes, String label) throws FileProblemException {
        requireWritable();
        gesture.settle();
        CompoundCommand all = new CompoundCommand(label);
        for (Change change : changes) {
            all.append(change.with(edits));
        }
        execute(all);
    }

    @Override
    public void undo() {
        if (gesture.previewing()) {
            gesture.giveBack();
        } else {
            super.undo();
        }
    }

    /** Whether a command is the last one. */
    boolean isLast(Command command) {
        return lastCommand() == command;
    }

    /** Takes the last command back, whatever is shown. */
    void takeBack() {
        undoCommand();
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
        return document();
    }

    /** {@return whether a change at this path would first copy a linked part into the design} */
    public boolean copiesLinkedPart(String path) {
        return edits.copiesLinkedPart(path);
    }
}
