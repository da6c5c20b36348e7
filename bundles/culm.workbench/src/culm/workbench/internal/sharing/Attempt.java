package culm.workbench.internal.sharing;

import java.util.function.Consumer;

import culm.model.problem.FileProblemException;

/** Something that a file may refuse. */
@FunctionalInterface
public interface Attempt {
    /**
     * Does it.
     *
     * @throws FileProblemException when it cannot be done; says why
     */
    void run() throws FileProblemException;

    /**
     * Does it, or tells why not.
     *
     * @param attempt what to do
     * @param refused told why it cannot be done
     * @return whether it was done
     */
    static boolean at(Attempt attempt, Consumer<FileProblemException> refused) {
        try {
            attempt.run();
            return true;
        } catch (FileProblemException e) {
            refused.accept(e);
            return false;
        }
    }
}
