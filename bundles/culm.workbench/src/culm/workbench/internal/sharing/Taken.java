package culm.workbench.internal.sharing;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;

/** A command with which something beside the document changes, too. */
final class Taken extends CommandWrapper {
    private final Runnable done;
    private final Runnable undone;

    Taken(Command command, Runnable done, Runnable undone) {
        super(command.getLabel(), command);
        this.done = done;
        this.undone = undone;
    }

    @Override
    public void execute() {
        super.execute();
        done.run();
    }

    @Override
    public void undo() {
        super.undo();
        undone.run();
    }

    @Override
    public void redo() {
        super.redo();
        done.run();
    }
}
