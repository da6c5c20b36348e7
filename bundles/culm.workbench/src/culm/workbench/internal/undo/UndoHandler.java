package culm.workbench.internal.undo;

/** Edit, Undo: says what it takes back. */
public final class UndoHandler extends StepHandler {
    /** A handler. */
    public UndoHandler() {
        super("&Undo", UndoTarget::undoLabel, UndoTarget::undo);
    }
}
