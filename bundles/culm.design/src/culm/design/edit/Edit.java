package culm.design.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.ChangeCommand;

/**
 * One change of a document. It runs once; what it changed is recorded, so that undo and redo put back exactly that, whether a value was
 * set or absent included.
 */
public final class Edit extends ChangeCommand {
    private final Runnable change;

    /**
     * @param root   what is changed, with all that is in it
     * @param label  what the change is, after the words "undo" and "redo"
     * @param change changes the model; called once
     */
    Edit(EObject root, String label, Runnable change) {
        super(root);
        this.change = change;
        setLabel(label);
    }

    /**
     * A change of any document.
     *
     * @param root   what is changed, with all that is in it
     * @param label  what the change is, after the words "undo" and "redo"
     * @param change changes the model; called once
     */
    public static Edit of(EObject root, String label, Runnable change) {
        return new Edit(root, label, change);
    }

    /** @throws RuntimeException when the change cannot be made; what it had changed by then is put back */
    @Override
    public void execute() {
        try {
            super.execute();
        } catch (RuntimeException e) {
            if (getChangeDescription() != null) {
                undo();
            }
            throw e;
        }
    }

    @Override
    protected void doExecute() {
        change.run();
    }
}
