package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import culm.model.problem.FileProblemException;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.undo.UndoTarget;

/** What was done with the studio's files, so that it can be taken back. */
public final class StudioSteps implements UndoTarget {
    private final Runnable done;
    private final Deque<FileStep> before = new ArrayDeque<>();
    private final Deque<FileStep> after = new ArrayDeque<>();
    private Consumer<FileProblemException> refused = e -> { };
    private Following following = Following.NONE;
    private FileStep last;
    private long lastAt;

    /** What goes along with the files. */
    interface Following {
        /** Nothing does. */
        Following NONE = new Following() {
        };

        /** Some files are about to be no longer there. @throws FileProblemException when something of them would be lost; then nothing is done */
        default void ahead(List<Path> gone) throws FileProblemException {
        }

        /** A step was done, or taken back. */
        default void done(FileStep step, boolean back) {
        }
    }

    StudioSteps(Runnable done) {
        this.done = done;
    }

    /** What to do when a step cannot be taken back. */
    public void onRefused(Consumer<FileProblemException> todo) {
        refused = todo;
    }

    /** What goes along with the files from now on. */
    void follow(Following those) {
        following = those;
    }

    /** Forgets all steps: they were done in another folder. */
    void forget() {
        before.clear();
        after.clear();
    }

    /**
     * What a file's editor takes back before its own steps: the last one of the studio, if it was done from there and later than them.
     *
     * @param file the file that is edited
     * @param since when its own last step was, as {@link System#nanoTime} tells
     * @param back whether it is to be taken back, and not done again
     * @return this, or nothing when the file's own steps are meant
     */
    public Optional<UndoTarget> doneFrom(Path file, long since, boolean back) {
        boolean next = last != null && (back ? before : after).peek() == last;
        return next && last.isAbout(file) && lastAt - since > 0 ? Optional.of(this) : Optional.empty();
    }

    private void told(FileStep step, boolean back) {
        last = step;
        lastAt = System.nanoTime();
        following.done(step, back);
        done.run();
    }

    /** Does a step, to be taken back later. @throws FileProblemException when it cannot be done; then nothing is */
    public void run(FileStep step) throws FileProblemException {
        following.ahead(step.gone(false));
        step.run();
        before.push(step);
        after.clear();
        told(step, false);
    }

    @Override
    public Optional<String> undoLabel() {
        return Optional.ofNullable(before.peek()).map(FileStep::label);
    }

    @Override
    public Optional<String> redoLabel() {
        return Optional.ofNullable(after.peek()).map(FileStep::label);
    }

    @Override
    public void undo() {
        move(before, after, true);
    }

    @Override
    public void redo() {
        move(after, before, false);
    }

    private void move(Deque<FileStep> from, Deque<FileStep> to, boolean back) {
        FileStep step = from.peek();
        if (step == null) {
            return;
        }
        Attempt.at(() -> {
            following.ahead(step.gone(back));
            if (back) {
                step.undo();
            } else {
                step.redo();
            }
            to.push(from.pop());
            told(step, back);
        }, e -> {
            refused.accept(e);
            done.run();
        });
    }
}
