package culm.workbench.internal.form;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Tolerance;
import culm.blank.rules.Finding;
import culm.blank.rules.Severity;
import culm.geometry.profile.Parameter;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.NumberField;
import culm.workbench.internal.widgets.NumberField.Origin;

/** One number of the form: its words and its field. */
public final class NumberRow {
    /** Numbers nearer than this are the same one, mm or a share. */
    private static final double SAME = 1e-9;
    private final FormPlan.Number item;
    private final FormContext context;
    private final FieldLabel label;
    private final NumberField field;
    private String wrong = "";
    private OptionalDouble shown = OptionalDouble.empty();
    private Optional<Severity> signed = Optional.empty();

    /**
     * A row of two columns.
     *
     * @param parent where it goes, a grid of two columns
     * @param item the number
     * @param context its form
     */
    public NumberRow(Composite parent, FormPlan.Number item, FormContext context) {
        this.item = item;
        this.context = context;
        label = new FieldLabel(parent, context.look(), words(), context.roomForWords());
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        field = new NumberField(parent, context.look());
        field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        field.control().setData("culm.path", item.path());
        field.onEnter(this::enter);
        field.onStep(this::step);
        field.onFocus(() -> context.focused(this));
        field.control().getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent e) {
                e.result = words();
            }
        });
    }

    /** {@return the number} */
    public FormPlan.Number item() {
        return item;
    }

    /** {@return its field} */
    public NumberField field() {
        return field;
    }

    /** {@return what is wrong with what was typed; empty when nothing is} */
    String wrong() {
        return wrong;
    }

    /** {@return the words beside its field} */
    String words() {
        return item.words(context.units().now());
    }

    NumberForm form() {
        Tolerance t = tolerance();
        return NumberForm.of(item.parameter().quantity(), context.units().now(), t.plusMinus());
    }

    Tolerance tolerance() {
        return context.tolerance(item.path());
    }

    OptionalDouble value() {
        return context.value(item.path());
    }

    /** Shows its number as it is now. */
    public void show() {
        OptionalDouble value = context.shownValue(item.path());
        Optional<Severity> sign = sign(context.findings());
        shown = value;
        signed = sign;
        label.say(words());
        label.setToolTipText(form().help(item.parameter()));
        label.sign(wrong.isEmpty() ? sign : Optional.of(Severity.ERROR));
        boolean bad = !wrong.isEmpty() || sign.filter(s -> s == Severity.ERROR).isPresent();
        field.lock(context.locked());
        String text = value.isPresent() ? form().text(value.getAsDouble()) : "none";
        field.show(text, value.isEmpty() || tolerance().measured() ? Origin.MEASURED : Origin.ASSUMED, bad);
    }

    /** Something was changed: what was refused before is over, unless it is still being typed. */
    void changed() {
        if (!field.control().isFocusControl()) {
            wrong = "";
        }
        show();
    }

    /** Shows it when its number or its sign is another one; all else is as it was. */
    void moved() {
        if (!context.shownValue(item.path()).equals(shown) || !sign(context.findings()).equals(signed)) {
            show();
        }
    }

    private Optional<Severity> sign(List<Finding> findings) {
        return findings.stream().filter(f -> f.path().equals(item.path()) && f.severity() != Severity.FINE && f.severity() != Severity.ADVICE).map(Finding::severity).findFirst();
    }

    private boolean enter(String typed) {
        wrong = "";
        Parameter described = item.parameter();
        boolean empty = typed.isBlank() || typed.strip().equals("none");
        try {
            if (empty && described.optional()) {
                context.change(edits -> edits.clear(item.path()), "no " + words());
                return true;
            }
            double value = form().parse(typed);
            if (value().isPresent() && Math.abs(value().getAsDouble() - value) < SAME) {
                show();
                context.focused(this); // what was said of another try is over
                return true;
            }
            Optional<String> refused = form().refuse(described, value);
            if (refused.isPresent()) {
                throw new NumberFormatException(refused.get());
            }
            context.change(edits -> edits.setValue(item.path(), value), words() + " " + form().text(value));
            return true;
        } catch (NumberFormatException e) {
            wrong = Character.toUpperCase(e.getMessage().charAt(0)) + e.getMessage().substring(1);
        } catch (FileProblemException e) {
            wrong = e.problem().message();
        }
        context.refused(this, wrong);
        return false;
    }

    private void step(int hundredths) {
        OptionalDouble now = value();
        if (now.isEmpty()) {
            return;
        }
        double to = form().stepped(now.getAsDouble(), hundredths);
        if (item.parameter().refuse(to).isPresent()) {
            return;
        }
        try {
            context.step(item.path(), to, words() + " " + form().text(to));
        } catch (FileProblemException e) {
            context.refused(this, e.problem().message());
        }
    }
}
