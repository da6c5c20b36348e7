package culm.workbench.internal.editor;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;

import culm.design.DesignedBlank;
import culm.design.edit.Edit;
import culm.model.problem.FileProblemException;

/**
 * Moving one value by hand. A drag is only shown until it ends, then it is one command. Steps of the arrow keys are commands
 * at once, and those that follow each other at the same value become one.
 */
public final class Gesture {
    private final DesignSession session;
    private String path = "";
    private String label = "";
    private double value;
    private boolean previewing;
    private Command steps;

    Gesture(DesignSession session) {
        this.session = session;
    }

    /**
     * Shows what another value would do; the design is not changed.
     *
     * @param at path of the input
     * @param to its value
     * @param what what the command will be called
     */
    public void preview(String at, double to, String what) {
        Optional<DesignedBlank> now = session.blank();
        if (now.isEmpty() || previewing && at.equals(path) && to == value) {
            return;
        }
        path = at;
        value = to;
        label = what;
        previewing = true;
        DesignedBlank d = now.get();
        session.compute(new DesignedBlank(d.name(), d.blank().with(at, to), d.limits(), d.places(), d.remarks()));
    }

    /**
     * Makes what is previewed real, as one command.
     *
     * @throws FileProblemException when a linked part cannot be found
     */
    public void settle() throws FileProblemException {
        if (!previewing) {
            return;
        }
        previewing = false;
        double to = value;
        String at = path;
        session.change(edits -> edits.tryValue(at, to), label);
    }

    /** Gives back what is previewed or was stepped. */
    public void giveBack() {
        if (previewing) {
            previewing = false;
            session.refresh();
        } else if (stepping()) {
            steps = null;
            session.takeBack();
        }
    }

    /**
     * Moves a value by a step of the arrow keys.
     *
     * @param at path of the input
     * @param to its new value
     * @param what what the command is called
     * @throws FileProblemException when a linked part cannot be found
     */
    public void step(String at, double to, String what) throws FileProblemException {
        boolean goesOn = stepping() && at.equals(path);
        if (goesOn) {
            session.takeBack();
        }
        path = at;
        Edit[] made = new Edit[1];
        session.change(edits -> made[0] = edits.tryValue(at, to), what);
        steps = made[0];
    }

    /** {@return whether something is previewed} */
    public boolean previewing() {
        return previewing;
    }

    /** {@return whether the last command came from the arrow keys and may go on} */
    public boolean stepping() {
        return steps != null && session.isLast(steps);
    }

    /** The next step begins a command of its own. */
    public void endSteps() {
        steps = null;
    }

    void forgetPreview() {
        previewing = false;
    }
}
