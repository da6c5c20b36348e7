package culm.model.text;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * What every object of the model is built on: it remembers the line of the file it stands on. The line is no feature:
 * it is not compared, copied, undone or told to listeners.
 */
public abstract class Located extends MinimalEObjectImpl.Container {
    private int line;

    /**
     * The line an object was last read from or written to.
     *
     * @param object any object
     * @return the line, from 1; 0 when it never stood in a file
     */
    public static int lineOf(EObject object) {
        return object instanceof Located located ? located.line : 0;
    }

    /**
     * Notes the line an object stands on.
     *
     * @param object any object
     * @param line the line, from 1
     */
    public static void place(EObject object, int line) {
        if (object instanceof Located located) {
            located.line = line;
        }
    }
}
