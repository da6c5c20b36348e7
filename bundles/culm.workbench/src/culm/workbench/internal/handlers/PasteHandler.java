package culm.workbench.internal.handlers;

import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;

/** Edit, Paste: rows into a table of measured places, otherwise text into the field that has the focus. */
public final class PasteHandler extends AbstractHandler {
    /** The key of a control's data under which stands what takes a pasted text: a predicate that says whether it did. */
    public static final String KEY = "culm.paste";

    @Override
    public Object execute(ExecutionEvent event) {
        pasteInto(Display.getCurrent().getFocusControl());
        return null;
    }

    /** {@return what text the clipboard holds} */
    public static Optional<String> text(Display display) {
        Clipboard clipboard = new Clipboard(display);
        try {
            return clipboard.getContents(TextTransfer.getInstance()) instanceof String text ? Optional.of(text) : Optional.empty();
        } finally {
            clipboard.dispose();
        }
    }

    /**
     * Pastes the clipboard's text.
     *
     * @param control where to; may be null
     */
    public static void pasteInto(Control control) {
        if (control == null) {
            return;
        }
        @SuppressWarnings("unchecked")
        Predicate<String> taker = (Predicate<String>) control.getData(KEY);
        if (taker != null && text(control.getDisplay()).filter(taker).isPresent()) {
            return;
        }
        if (control instanceof StyledText styled) {
            styled.paste();
        } else if (control instanceof Text plain) {
            plain.paste();
        } else if (control instanceof Combo combo) {
            combo.paste();
        }
    }
}
