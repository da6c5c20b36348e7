package culm.workbench.internal.undo;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;

/** What was typed into one field since it got the focus; so a text field keeps its own undo. */
public final class TypedText implements UndoTarget {
    private final Consumer<String> show;
    private final Deque<String> before = new ArrayDeque<>();
    private final Deque<String> after = new ArrayDeque<>();
    private String now = "";
    private boolean moving;

    /**
     * Begins without any typing.
     *
     * @param show puts a text into the field
     */
    public TypedText(Consumer<String> show) {
        this.show = show;
    }

    /**
     * The field holds this text, and nothing was typed.
     *
     * @param text the text
     */
    public void reset(String text) {
        before.clear();
        after.clear();
        now = text;
    }

    /**
     * The field's text has changed.
     *
     * @param text the new text
     */
    public void typed(String text) {
        if (moving || text.equals(now)) {
            return;
        }
        before.push(now);
        after.clear();
        now = text;
    }

    @Override
    public Optional<String> undoLabel() {
        return before.isEmpty() ? Optional.empty() : Optional.of("typing");
    }

    @Override
    public Optional<String> redoLabel() {
        return after.isEmpty() ? Optional.empty() : Optional.of("typing");
    }

    @Override
    public void undo() {
        move(before, after);
    }

    @Override
    public void redo() {
        move(after, before);
    }

    private void move(Deque<String> from, Deque<String> to) {
        if (from.isEmpty()) {
            return;
        }
        to.push(now);
        now = from.pop();
        moving = true;
        show.accept(now);
        moving = false;
    }
}
