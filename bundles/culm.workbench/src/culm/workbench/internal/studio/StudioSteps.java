package culm.workbench.internal.studio;

import java.util.ArrayDeque;
import java.util.Deque;
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

    StudioSteps(Runnable done) {
        this.done = done;
    }

    /** What to do when a step cannot be taken back. */
    public void onRefused(Consumer<FileProblemException> todo) {
        refused = todo;
    }

    /** Does a step, to be taken back later. @throws FileProblemException when it cannot be done; then nothing is */
    public void run(FileStep step) throws FileProblemException {
        step.run();
        before.push(step);
        after.clear();
        done.run();
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
            if (back) {
                step.undo();
            } else {
                step.redo();
            }
            to.push(from.pop());
        }, refused);
        done.run();
    }
}
