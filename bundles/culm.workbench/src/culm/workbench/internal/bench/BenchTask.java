package culm.workbench.internal.bench;

import java.util.function.Consumer;

/** What the menu and keys of the bench can do. */
public enum BenchTask {
    /** Begins a new batch of staples. */
    NEW_BATCH(BenchActions::newBatch),
    /** Begins a new reed log. */
    NEW_LOG(BenchActions::newLog),
    /** Opens the card of what is open. */
    CARD(BenchActions::card),
    /** Opens the templates of the design that is open. */
    TEMPLATE(BenchActions::template),
    /** Begins a new blank in the log that is open. */
    BLANK(BenchActions::newBlank),
    /** Says what went wrong with the chosen blank of the log. */
    WRONG(BenchActions::wrong),
    /** Shows what the log teaches. */
    LEARN(BenchActions::learn),
    /** Takes a table into the batch or log that is open. */
    READ(BenchActions::readTable),
    /** Writes the batch or log that is open as a table. */
    WRITE(BenchActions::writeTable);

    private final Consumer<BenchActions> todo;

    BenchTask(Consumer<BenchActions> todo) {
        this.todo = todo;
    }

    void run(BenchActions actions) {
        todo.accept(actions);
    }
}
