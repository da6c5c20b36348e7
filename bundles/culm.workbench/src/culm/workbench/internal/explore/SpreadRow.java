package culm.workbench.internal.explore;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import culm.explore.Spread;
import culm.explore.Varied;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** How one input scatters: what kind, and its numbers. Three cells of a grid. */
public final class SpreadRow {
    /** Kinds of spread, as they stand in the list. */
    public enum Kind {
        /** It does not vary. */
        FIXED("fixed", ""),
        /** Any value as likely as any other. */
        UNIFORM("within ±", "Any value as likely: one number, or two differences with ; between"),
        /** A normal distribution. */
        NORMAL("normal", "Its standard deviation"),
        /** Most often in the middle. */
        TRIANGULAR("triangular", "Least; likeliest; most, as differences"),
        /** One of some measured values. */
        MEASURED("measured", "The measured values, typed or pasted: 0.58; 0.60; 0.61");

        private final String words;
        private final String help;

        Kind(String words, String help) {
            this.words = words;
            this.help = help;
        }
    }

    private final Offer.Number number;
    private final List<String> also;
    private final Spread usual;
    private final Label label;
    private final Combo kind;
    private final Text text;
    private final TypedValues typed;

    /** @param changed run after another kind was chosen or something else typed */
    SpreadRow(Composite parent, Workshop workshop, Offer.Number number, Optional<Varied> usual, Runnable changed) {
        this.number = number;
        this.also = usual.map(Varied::also).orElse(List.of());
        this.usual = usual.map(Varied::spread).orElse(new Spread.Fixed());
        label = new Label(parent, SWT.NONE);
        label.setText(number.words());
        label.setToolTipText(number.words());
        label.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, Role.INK);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 60;
        label.setLayoutData(wide);
        kind = new Combo(parent, SWT.READ_ONLY);
        kind.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        for (Kind each : Kind.values()) {
            kind.add(each.words);
        }
        kind.setData("culm.explore", "kind " + number.id());
        text = new Text(parent, SWT.BORDER | SWT.RIGHT);
        text.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        GridData cell = new GridData(SWT.FILL, SWT.CENTER, false, false);
        cell.widthHint = 62;
        text.setLayoutData(cell);
        text.setData("culm.explore", "spread " + number.id());
        typed = new TypedValues(text, workshop.units(), changed);
        workshop.units().onChange(text, () -> typed.rewrite(number::form));
        kind.addListener(SWT.Selection, e -> {
            choose(Kind.values()[kind.getSelectionIndex()]);
            changed.run();
        });
        reset();
    }

    /** Back to what is usual. */
    void reset() {
        NumberForm form = number.form(LengthUnit.MM); // whatever is shown, so that nothing is rounded
        boolean uniform = usual instanceof Spread.Uniform;
        kind.select(uniform ? Kind.UNIFORM.ordinal() : Kind.FIXED.ordinal());
        typed.set(usual instanceof Spread.Uniform u ? u.low() == -u.high() ? form.text(u.high()) : form.bare(u.low()) + "; " + form.text(u.high()) : "", LengthUnit.MM, number::form);
        choose(Kind.values()[kind.getSelectionIndex()]);
    }

    /** Chooses a kind of spread. */
    public void choose(Kind now) {
        kind.select(now.ordinal());
        text.setEnabled(now != Kind.FIXED);
        text.setToolTipText(now.help);
    }

    /** Types its numbers. */
    public void type(String numbers) {
        text.setText(numbers);
    }

    /** {@return what is chosen and typed, to be told from something else later, in whatever unit it is shown then} */
    String told() {
        return kind.getSelectionIndex() == Kind.FIXED.ordinal() ? "" : number.id() + " " + kind.getText() + " " + typed.text() + typed.unit().sign();
    }

    String id() {
        return number.id();
    }

    /** {@return how it varies; empty when it does not} @throws IllegalArgumentException when what is typed is no spread */
    public Optional<Varied> varied() {
        try {
            Spread spread = spread(Kind.values()[kind.getSelectionIndex()], ValuesText.list(number.form(typed.unit()), typed.text()));
            return spread.moves() ? Optional.of(new Varied(number.id(), spread, also)) : Optional.empty();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(number.words() + ": " + e.getMessage(), e);
        }
    }

    private static Spread spread(Kind kind, double[] x) {
        return switch (kind) {
            case FIXED -> new Spread.Fixed();
            case UNIFORM -> x.length == 2 ? new Spread.Uniform(x[0], x[1]) : new Spread.Uniform(need(x, 1)[0]);
            case NORMAL -> new Spread.Normal(need(x, 1)[0]);
            case TRIANGULAR -> new Spread.Triangular(need(x, 3)[0], x[1], x[2]);
            case MEASURED -> new Spread.Measured(x, "");
        };
    }

    private static double[] need(double[] x, int count) {
        if (x.length != count) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "it needs %s, not %d.", count == 1 ? "one number" : count + " numbers, with ; between", x.length));
        }
        return x;
    }
}
