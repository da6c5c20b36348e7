package culm.workbench.internal.explore;

import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;

import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;

/** What was typed into a field for values, kept as it was: only what is shown is written in another unit. */
final class TypedValues {
    private final Text field;
    private final Units units;
    private String typed = "";
    private LengthUnit typedIn;
    private boolean writing;

    /** @param changed run after something was typed */
    TypedValues(Text field, Units units, Runnable changed) {
        this.field = field;
        this.units = units;
        taken();
        field.addListener(SWT.Modify, e -> {
            if (!writing) {
                taken();
                changed.run();
            }
        });
    }

    /** Takes what stands there as what was typed, in the unit that is chosen now. */
    void taken() {
        typed = field.getText();
        typedIn = units.now();
    }

    /** {@return what was typed} */
    String text() {
        return typed;
    }

    /** {@return in what unit} */
    LengthUnit unit() {
        return typedIn;
    }

    /** Takes other values than what stands there. @param in the unit they are written in; @param form as {@link #rewrite} */
    void set(String values, LengthUnit in, Function<LengthUnit, NumberForm> form) {
        typed = values;
        typedIn = in;
        rewrite(form);
    }

    /** Shows it in the unit that is chosen now. @param form how its numbers are written in a unit */
    void rewrite(Function<LengthUnit, NumberForm> form) {
        LengthUnit now = units.now();
        writing = true;
        field.setText(now == typedIn ? typed : ValuesText.rewritten(form.apply(typedIn), form.apply(now), typed));
        writing = false;
    }
}
