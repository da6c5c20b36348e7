package culm.workbench.internal.widgets;

import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Control;

/**
 * What is being typed into a control and not entered yet; it stands among the control's data under {@link #KEY}.
 *
 * @param typed whether something is, neither taken over nor refused
 * @param settle takes it over, as leaving the control does
 * @param giveBack puts back what is shown
 */
public record Typing(BooleanSupplier typed, Runnable settle, Runnable giveBack) {
    private static final String KEY = "culm.typing";

    /** Tells of a control's. */
    public void in(Control control) {
        control.setData(KEY, this);
    }

    /** Ends it in a control, before a text without a unit would mean something else: it is taken over, and what cannot be is given back. */
    public static void end(Control control) {
        if (control != null && control.getData(KEY) instanceof Typing typing) {
            typing.settle.run();
            typing.giveBack.run();
        }
    }

    /** {@return what is being typed into a control, if anything is} */
    public static Optional<Typing> of(Control control) {
        return control != null && control.getData(KEY) instanceof Typing typing && typing.typed.getAsBoolean() ? Optional.of(typing) : Optional.empty();
    }
}
