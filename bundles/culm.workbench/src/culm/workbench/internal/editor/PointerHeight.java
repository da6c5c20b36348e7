package culm.workbench.internal.editor;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CopyOnWriteArrayList;

/** The height that all drawings of an editor point at: where the pointer is, or where it was pinned. */
public final class PointerHeight {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private OptionalDouble pointer = OptionalDouble.empty();
    private OptionalDouble pinned = OptionalDouble.empty();

    /**
     * The pointer is at a height.
     *
     * @param z mm from the bottom of the staple
     */
    public void at(double z) {
        if (pointer.isEmpty() || pointer.getAsDouble() != z) {
            pointer = OptionalDouble.of(z);
            tell();
        }
    }

    /**
     * Pins the section.
     *
     * @param z where; empty to let it follow the pointer again
     */
    public void pin(OptionalDouble z) {
        pinned = z;
        tell();
    }

    /** {@return where the section is cut: pinned, else at the pointer; empty when it was never over a drawing} */
    public OptionalDouble height() {
        return pinned.isPresent() ? pinned : pointer;
    }

    /** {@return whether it is pinned} */
    public boolean isPinned() {
        return pinned.isPresent();
    }

    /**
     * Runs something on every change.
     *
     * @param change what to run
     */
    public void onChange(Runnable change) {
        listeners.add(change);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
