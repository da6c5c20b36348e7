package culm.workbench.internal.form;

import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Tolerance;
import culm.blank.rules.Finding;
import culm.design.edit.RowEntry;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.sharing.FileSession.Change;

/** What the rows of a form need of it. Inputs are named by their paths. */
public interface FormContext {
    /** {@return colours and fonts} */
    Look look();

    /** {@return room for the words beside a number, points; longer ones stand in two lines} */
    default int roomForWords() {
        return FieldLabel.NARROW;
    }

    /** {@return the unit of lengths} */
    Units units();

    /** {@return a number as it stands; empty when there is none} */
    OptionalDouble value(String path);

    /** {@return a number as it is shown, perhaps only to try it; empty when there is none} */
    default OptionalDouble shownValue(String path) {
        return value(path);
    }

    /** {@return how well a number is known} */
    Tolerance tolerance(String path);

    /** {@return whether the usual values, which are an oboe's, say something here} */
    boolean usual();

    /** {@return what was found wrong} */
    List<Finding> findings();

    /** {@return the rows of a table as they stand} */
    List<RowEntry> rows(String path) throws FileProblemException;

    /** {@return whether all of it may only be looked at} */
    boolean locked();

    /** Changes what is edited. @param label what that is called in the menu; empty to keep its own */
    void change(Change change, String label) throws FileProblemException;

    /** Moves a number by a step of the arrow keys. */
    void step(String path, double to, String label) throws FileProblemException;

    /** A row's field has the focus. */
    void focused(NumberRow row);

    /** Something in the form needs more or less room. */
    void fit();

    /** What was typed cannot be used. */
    void refused(NumberRow row, String sentence);
}
