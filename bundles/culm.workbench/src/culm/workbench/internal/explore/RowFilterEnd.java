package culm.workbench.internal.explore;

import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;

/** One end between which a number is held. What was typed is kept as it was: only what is shown is written in another unit. */
final class RowFilterEnd {
    private static final int NUMBER = 52;
    private final Look look;
    private final Units units;
    private final Text text;
    private final TypedValues values;

    /** @param name by which it is found; @param changed run after something was typed */
    RowFilterEnd(Composite parent, Look look, Units units, String name, Runnable changed) {
        this.look = look;
        this.units = units;
        text = new Text(parent, SWT.BORDER | SWT.RIGHT);
        text.setFont(look.font(Size.BODY, SWT.NORMAL));
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = NUMBER;
        text.setLayoutData(data);
        text.setData("culm.explore", name);
        values = new TypedValues(text, units, () -> {
            explain();
            changed.run();
        });
        explain();
    }

    private void explain() {
        text.setToolTipText("Only rows with this number between the two ends; lengths in " + units.now().sign());
    }

    /** Takes what stands there as what was typed, in the unit that is chosen now. */
    void taken() {
        values.taken();
        explain();
    }

    /** Writes it in the unit that is chosen now. @param form how a number of the column is shown */
    void rewrite(Function<LengthUnit, NumberForm> form) {
        values.rewrite(form);
        explain();
    }

    /** {@return the number; NaN for none} @param form how a number of the column is typed */
    double value(Function<LengthUnit, NumberForm> form) {
        try {
            double value = values.text().isBlank() ? Double.NaN : form.apply(values.unit()).parse(values.text());
            text.setForeground(look.colour(Role.INK));
            return value;
        } catch (NumberFormatException e) {
            text.setForeground(look.colour(Role.DOES_NOT));
            return Double.NaN;
        }
    }
}
