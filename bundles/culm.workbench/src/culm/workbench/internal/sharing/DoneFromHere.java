package culm.workbench.internal.sharing;

import java.util.Optional;

import culm.workbench.internal.studio.StudioSteps;
import culm.workbench.internal.undo.UndoTarget;

/** What an editor takes back: its file's own steps, and before them what was done from it with other files of the studio. */
record DoneFromHere(FileSession<?> own, StudioSteps studio) implements UndoTarget {
    private UndoTarget next(boolean back) {
        return studio.doneFrom(own.file(), own.changedAt(), back).orElse(own);
    }

    @Override
    public Optional<String> undoLabel() {
        return next(true).undoLabel();
    }

    @Override
    public Optional<String> redoLabel() {
        return next(false).redoLabel();
    }

    @Override
    public void undo() {
        next(true).undo();
    }

    @Override
    public void redo() {
        next(false).redo();
    }
}
