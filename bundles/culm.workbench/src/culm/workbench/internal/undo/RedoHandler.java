package culm.workbench.internal.undo;

/** Edit, Redo: says what it does again. */
public final class RedoHandler extends StepHandler {
    /** A handler. */
    public RedoHandler() {
        super("&Redo", UndoTarget::redoLabel, UndoTarget::redo);
    }
}
