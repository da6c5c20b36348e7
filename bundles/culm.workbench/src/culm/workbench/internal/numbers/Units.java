package culm.workbench.internal.numbers;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** The unit lengths are shown in now, for the whole window. Used on the display's thread only. */
public final class Units {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private LengthUnit now = LengthUnit.MM;

    /** {@return the unit} */
    public LengthUnit now() {
        return now;
    }

    /**
     * Shows lengths in another unit.
     *
     * @param unit the unit
     */
    public void choose(LengthUnit unit) {
        if (now != unit) {
            now = unit;
            listeners.forEach(Runnable::run);
        }
    }

    /**
     * Runs something on every change.
     *
     * @param change what to run
     * @return ends that
     */
    public Runnable onChange(Runnable change) {
        listeners.add(change);
        return () -> listeners.remove(change);
    }
}
