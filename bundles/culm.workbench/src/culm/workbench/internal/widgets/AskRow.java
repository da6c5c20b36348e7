package culm.workbench.internal.widgets;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import culm.geometry.profile.Parameter;
import culm.workbench.internal.numbers.NumberForm;

/** A number that a dialog asks for: words, field, and the help below the pointer. What is typed is checked against its description. */
public final class AskRow {
    private final Parameter described;
    private final NumberForm form;
    private final Text text;
    private boolean mayBeEmpty;

    /**
     * A row of two columns.
     *
     * @param parent where it goes, a grid of two columns
     * @param words what is asked for
     * @param described its description
     * @param form how it is shown and typed
     * @param value what stands there first; NaN for nothing
     * @param changed run after each change
     */
    public AskRow(Composite parent, String words, Parameter described, NumberForm form, double value, Runnable changed) {
        this.described = described;
        this.form = form;
        this.mayBeEmpty = described.optional();
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setToolTipText(form.help(described));
        text = new Text(parent, SWT.BORDER | SWT.RIGHT);
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = 110;
        text.setLayoutData(data);
        text.setToolTipText(form.help(described));
        text.setData("culm.ask", described.id());
        if (!Double.isNaN(value)) {
            text.setText(form.text(value));
        }
        text.addListener(SWT.Modify, e -> changed.run());
    }

    /** {@return the number; empty when none, or none that may be used, is typed} */
    public Optional<Double> value() {
        return wrong().isEmpty() && !text.getText().isBlank() ? Optional.of(form.parse(text.getText())) : Optional.empty();
    }

    /** {@return what is wrong with what is typed; empty when nothing is} */
    public Optional<String> wrong() {
        return refused().map(s -> Character.toUpperCase(s.charAt(0)) + s.substring(1));
    }

    private Optional<String> refused() {
        if (text.getText().isBlank()) {
            return mayBeEmpty ? Optional.empty() : Optional.of(described.label() + " is needed.");
        }
        try {
            return form.refuse(described, form.parse(text.getText()));
        } catch (NumberFormatException e) {
            return Optional.of(described.label() + ": " + e.getMessage());
        }
    }

    /**
     * It may be left empty; then something is assumed, and the field says what.
     *
     * @param hint what stands in the empty field
     */
    public void mayBeEmpty(String hint) {
        mayBeEmpty = true;
        text.setMessage(hint);
    }

    /** {@return its field} */
    public Text control() {
        return text;
    }
}
