package culm.workbench.internal.handlers;

import java.util.function.Consumer;

import culm.workbench.internal.sharing.SharingActions;

/** What the menus and keys can do with parts, versions and plug-ins. */
public enum SharingTask {
    /** Replaces the chosen part in the designs that use it. */
    REPLACE(SharingActions::replace),
    /** Lists parts that are there twice. */
    DUPLICATES(SharingActions::duplicates),
    /** Asks for the name that others see. */
    NAME(SharingActions::name),
    /** Compares two designs. */
    COMPARE(SharingActions::compare),
    /** Shows the studio's history. */
    HISTORY(SharingActions::history),
    /** Shows which plug-in brings what. */
    PLUG_INS(SharingActions::plugIns);

    private final Consumer<SharingActions> todo;

    SharingTask(Consumer<SharingActions> todo) {
        this.todo = todo;
    }

    void run(SharingActions actions) {
        todo.accept(actions);
    }
}
