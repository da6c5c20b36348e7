package culm.workbench.internal.form;

import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;

/** What the rows of a form need of it. */
interface FormContext {
    /** {@return the design that is edited} */
    DesignSession session();

    /** {@return colours and fonts} */
    Look look();

    /** {@return the unit of lengths} */
    Units units();

    /** A row's field has the focus. */
    void focused(NumberRow row);

    /** Something in the form needs more or less room. */
    void fit();

    /** What was typed cannot be used. */
    void refused(NumberRow row, String sentence);
}
