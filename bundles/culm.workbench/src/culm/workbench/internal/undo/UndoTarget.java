package culm.workbench.internal.undo;

import java.util.Optional;

/**
 * Something whose steps can be taken back: an editor, the studio, or what was typed into a field. Parts offer it as an
 * adapter, controls as data under {@link #KEY}.
 */
public interface UndoTarget {
    /** The key of a control's data under which its own target stands. */
    String KEY = "culm.undo";

    /** {@return what the next undo takes back, in a few words; empty when there is nothing} */
    Optional<String> undoLabel();

    /** {@return what the next redo does again; empty when there is nothing} */
    Optional<String> redoLabel();

    /** Takes the last step back; does nothing when there is none. */
    void undo();

    /** Does the last step that was taken back again; does nothing when there is none. */
    void redo();
}
