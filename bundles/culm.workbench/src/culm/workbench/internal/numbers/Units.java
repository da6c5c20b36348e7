package culm.workbench.internal.numbers;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

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
     * Runs something on every change for as long as a control lives.
     *
     * @param control the control
     * @param change what to run
     */
    public void onChange(Control control, Runnable change) {
        listeners.add(change);
        control.addListener(SWT.Dispose, e -> listeners.remove(change));
    }
}
