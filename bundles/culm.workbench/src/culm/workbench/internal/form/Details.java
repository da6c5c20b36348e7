package culm.workbench.internal.form;

import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Tolerance;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.Parameter;
import culm.model.How;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.NumberField;
import culm.workbench.internal.widgets.NumberField.Origin;

/** All about the number that has the focus: where to measure it, its range, its give or take, measured or assumed. */
public final class Details extends Composite {
    private static final int LINES = 3;
    private final FormContext context;
    private final Label help;
    private final Label range;
    private final Label words;
    private final NumberField plusMinus;
    private final Button measured;
    private NumberRow row;
    private String trouble = "";

    /**
     * Nothing yet.
     *
     * @param parent where it goes
     * @param context the form
     */
    public Details(Composite parent, FormContext context) {
        super(parent, SWT.NONE);
        this.context = context;
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 18;
        layout.marginRight = -8;
        layout.horizontalSpacing = 4;
        layout.marginHeight = 6;
        layout.verticalSpacing = 4;
        setLayout(layout);
        context.look().dress(this, Role.PAPER, Role.INK);
        help = label(SWT.WRAP, Role.INK);
        GridData tall = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 3, 1);
        tall.heightHint = LINES * (int) Math.ceil(context.look().measure().line(Size.SMALL));
        help.setLayoutData(tall);
        range = label(SWT.NONE, Role.QUIET);
        range.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 3, 1));
        words = label(SWT.NONE, Role.QUIET);
        words.setText("give / take");
        plusMinus = new NumberField(this, context.look());
        GridData narrow = new GridData(SWT.FILL, SWT.CENTER, false, false);
        narrow.widthHint = 88;
        plusMinus.setLayoutData(narrow);
        plusMinus.onEnter(this::enter);
        measured = new Button(this, SWT.CHECK);
        measured.setText("measured");
        measured.setToolTipText("Measured, not assumed (Ctrl+M)");
        measured.setFont(context.look().font(Size.SMALL, SWT.NORMAL));
        context.look().dress(measured, Role.PAPER, Role.INK);
        measured.addListener(SWT.Selection, e -> toggled());
        setControlsVisible(false);
    }

    private Label label(int style, Role ink) {
        Label label = new Label(this, style);
        label.setFont(context.look().font(Size.SMALL, SWT.NORMAL));
        context.look().dress(label, Role.PAPER, ink);
        return label;
    }

    /** Takes no room until there is something to tell. */
    public void waits() {
        room(false);
    }

    private void room(boolean now) {
        GridData data = (GridData) getLayoutData();
        if (data.exclude == now) {
            data.exclude = !now;
            setVisible(now);
            getParent().layout();
        }
    }

    /** Tells about a row. */
    public void about(NumberRow now) {
        room(true);
        if (row != now) {
            trouble = "";
        }
        row = now;
        show();
    }

    /** The rows were made anew: it tells about the one of the same number, or about none when there is no such number any more. */
    public void among(FormRows rows) {
        if (row != null) {
            row = rows.number(row.item().path()).orElse(null);
            if (row == null) {
                set(help, "");
                set(range, "");
                setControlsVisible(false);
            }
        }
    }

    /** Tells why what was typed in a row cannot be used. */
    public void refused(NumberRow now, String sentence) {
        room(true);
        row = now;
        trouble = sentence;
        show();
    }

    /** Shows what is known of the row now. */
    public void show() {
        if (row == null || isDisposed()) {
            return;
        }
        if (row.wrong().isEmpty()) {
            trouble = "";
        }
        Parameter described = row.item().parameter();
        set(help, trouble.isEmpty() ? row.form().help(described) : trouble);
        help.setForeground(context.look().colour(trouble.isEmpty() ? Role.INK : Role.DOES_NOT));
        NumberForm form = row.form();
        String usual = described.optional() || !context.usual() ? "" : ", usual " + form.text(described.standard());
        set(range, form.bare(described.min()) + " to " + form.text(described.max()) + usual);
        boolean cell = row.item().path().indexOf('[') >= 0;
        setControlsVisible(!cell && row.value().isPresent());
        Tolerance known = row.tolerance();
        NumberForm fine = NumberForm.of(described.quantity(), context.units().now(), 0);
        plusMinus.show("± " + fine.text(known.plusMinus()), known.measured() ? Origin.MEASURED : Origin.ASSUMED, false);
        measured.setSelection(known.measured());
        plusMinus.lock(context.locked());
        measured.setEnabled(!context.locked());
    }

    private static void set(Label label, String text) {
        if (!label.getText().equals(text)) {
            label.setText(text);
        }
    }

    private void setControlsVisible(boolean now) {
        words.setVisible(now);
        plusMinus.setVisible(now);
        measured.setVisible(now);
    }

    private boolean enter(String typed) {
        try {
            NumberForm form = NumberForm.of(row.item().parameter().quantity(), context.units().now(), 0);
            double value = form.parse(typed.replace("±", "").replace("+-", "").replace("+/-", ""));
            if (value < 0) {
                throw new NumberFormatException("A give or take is not negative.");
            }
            context.change(edits -> edits.setTolerance(row.item().path(), OptionalDouble.of(value)),
                    row.words() + ", give or take " + form.text(value));
            return true;
        } catch (NumberFormatException e) {
            refused(row, e.getMessage());
        } catch (FileProblemException e) {
            refused(row, e.problem().message());
        }
        return false;
    }

    private void toggled() {
        if (row != null) {
            measured(measured.getSelection());
        }
    }

    /** Says of the number that has the focus whether it was measured. */
    void measured(boolean now) {
        try {
            context.change(edits -> edits.setHow(row.item().path(), now ? How.MEASURED : How.ASSUMED),
                    row.words() + (now ? " measured" : " assumed"));
        } catch (FileProblemException e) {
            refused(row, e.problem().message());
        }
    }
}
