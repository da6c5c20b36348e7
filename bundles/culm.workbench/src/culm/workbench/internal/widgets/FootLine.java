package culm.workbench.internal.widgets;

import java.util.Optional;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * The message at the foot of the window: it tells of what was just done, so it goes with the next click, key or command, wherever that is done. The one
 * place where it is set.
 */
public final class FootLine {
    private static final int[] DEEDS = {SWT.MouseDown, SWT.KeyDown, SWT.Selection};
    private final IStatusLineManager line;
    private final Runnable over;
    private final Listener deed = this::deed;
    private boolean said;

    /**
     * Says nothing yet.
     *
     * @param owner for as long as it lives
     * @param line where it is written
     * @param over told when the next thing was done
     */
    public FootLine(Control owner, IStatusLineManager line, Runnable over) {
        this.line = line;
        this.over = over;
        Display display = owner.getDisplay();
        for (int type : DEEDS) {
            display.addFilter(type, deed);
        }
        owner.addListener(SWT.Dispose, e -> {
            for (int type : DEEDS) {
                display.removeFilter(type, deed);
            }
        });
    }

    /** Says something, or nothing any more. */
    public void say(Optional<String> message) {
        if (said || message.isPresent()) {
            said = message.isPresent();
            line.setMessage(message.orElse(null));
        }
    }

    private void deed(Event e) {
        boolean onlyHeld = e.type == SWT.KeyDown && (e.keyCode & SWT.MODIFIER_MASK) != 0;
        if (said && !onlyHeld) {
            say(Optional.empty());
            over.run();
        }
    }
}
