package culm.workbench.internal.handlers;

import java.util.function.Consumer;

import culm.workbench.internal.studio.StudioActions;

/** What the menus and keys can do with the studio. */
public enum StudioTask {
    /** Opens another studio. */
    OPEN(StudioActions::openStudio),
    /** Begins a new design. */
    NEW_DESIGN(StudioActions::newDesign),
    /** Begins a new file of parts. */
    NEW_PARTS(StudioActions::newParts),
    /** Copies the chosen file. */
    COPY(StudioActions::copy),
    /** Gives the chosen file another name. */
    RENAME(StudioActions::rename),
    /** Removes the chosen file. */
    REMOVE(StudioActions::remove),
    /** Goes to the search. */
    FIND(StudioActions::find),
    /** Reads the folder again. */
    REFRESH(StudioActions::refresh);

    private final Consumer<StudioActions> todo;

    StudioTask(Consumer<StudioActions> todo) {
        this.todo = todo;
    }

    void run(StudioActions actions) {
        todo.accept(actions);
    }
}
