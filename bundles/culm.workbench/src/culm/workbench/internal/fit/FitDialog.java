package culm.workbench.internal.fit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import culm.blank.Fit;
import culm.blank.Inputs;
import culm.blank.rules.Say;
import culm.figures.Lengths;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.AskRow;

/** Start from a blank that works: asks what was seen, fits, and says what that takes off the give or take. */
public final class FitDialog extends TitleAreaDialog {
    private static final Parameter TURNS = new Parameter("turnsSeen", "turns left", Quantity.COUNT, -10, 30, Double.NaN, 0.5, true,
            "Turns between where the sides closed and the top of the wrap, counted on that blank.");
    private static final Parameter READING = new Parameter("reading", "give or take of the count", Quantity.COUNT, 0.05, 5, Fit.HALF_A_TURN, 0, true,
            "How far off the count may be; half a turn is usual.");
    private static final int DROP = IDialogConstants.CLIENT_ID + 1;
    private final Workshop workshop;
    private final DesignSession session;
    private final List<AskRow> rows = new ArrayList<>();
    private Text blank;
    private AskRow tie;
    private AskRow wrap;
    private AskRow turns;
    private AskRow reading;
    private Label result;
    private Optional<FitMaker.Made> made = Optional.empty();

    /**
     * The dialog for a design.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param session the design
     */
    public FitDialog(Shell shell, Workshop workshop, DesignSession session) {
        super(shell);
        this.workshop = workshop;
        this.session = session;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Start from a blank that works");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Start from a blank that works");
        setMessage("A blank tied with the parts of this design, and how many turns were left on it.");
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        area.setLayout(layout);
        new Label(area, SWT.NONE).setText("which blank");
        blank = new Text(area, SWT.BORDER);
        blank.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        blank.setMessage("its number or name");
        tie = row(area, "its tie length", Inputs.TIE_LENGTH);
        wrap = row(area, "its top of the wrap", Inputs.WRAP_TOP);
        turns = new AskRow(area, "turns left that were seen", TURNS, form(TURNS), Double.NaN, this::changed);
        reading = new AskRow(area, "give or take of that count", READING, form(READING), READING.standard(), this::changed);
        rows.addAll(List.of(tie, wrap, turns, reading));
        result = new Label(area, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        wide.widthHint = 420;
        wide.heightHint = 90;
        wide.verticalIndent = 8;
        result.setLayoutData(wide);
        turns.control().setFocus();
        return area;
    }

    private NumberForm form(Parameter described) {
        return NumberForm.of(described.quantity(), workshop.units().now(), described.tolerance());
    }

    private AskRow row(Composite parent, String words, String path) {
        Parameter described = Inputs.all().get(path);
        double now = session.blank().map(b -> b.blank().number(path)).orElse(described.standard());
        return new AskRow(parent, words, described, form(described), now, this::changed);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (session.design().getFit() != null) {
            createButton(parent, DROP, "Drop the fit", false);
        }
        createButton(parent, IDialogConstants.OK_ID, "Use this fit", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    private void changed() {
        made = Optional.empty();
        result.setText("");
        Optional<String> wrong = rows.stream().flatMap(r -> r.wrong().stream()).findFirst();
        if (wrong.isPresent()) {
            setMessage(wrong.get(), IMessageProvider.WARNING);
        } else if (turns.value().isPresent()) {
            fit();
        }
        getButton(IDialogConstants.OK_ID).setEnabled(made.isPresent());
    }

    private void fit() {
        try {
            FitMaker.Made now = new FitMaker(workshop, session).make(new FitMaker.Seen(blank.getText(), LocalDate.now(),
                    tie.value().get(), wrap.value().get(), turns.value().get(), reading.value().get()));
            made = Optional.of(now);
            setMessage("The model meets this blank.", IMessageProvider.INFORMATION);
            result.setText(words(now, workshop.units().now().drawn()));
        } catch (GeometryException e) {
            setMessage(workshop.units().now().drawn().told(e.told()), IMessageProvider.ERROR);
        } catch (FileProblemException e) {
            setMessage(e.problem().sentence(), IMessageProvider.ERROR);
        }
    }

    private static String words(FitMaker.Made now, Lengths unit) {
        String much = Math.abs(now.delta()) < 0.005 ? "Half of the blade's width is taken as the parts say, within " + unit.text(0.01, 2) + ". "
                : "Half of the blade's width is taken " + unit.text(Math.abs(now.delta()), 2) + (now.delta() < 0 ? " narrower" : " wider") + " than the parts say. ";
        String delta = much + "That stands for swelling, compression and a bias of the widths together; it cannot tell them apart.";
        String band = Double.isNaN(now.bandBefore()) || Double.isNaN(now.bandAfter()) ? ""
                : "\nThe give or take goes from " + Say.turns(now.bandBefore()) + " to " + Say.turns(now.bandAfter()) + ".";
        return delta + band;
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == DROP) {
            attempt(() -> session.change(edits -> edits.setFit(null), ""));
        } else {
            super.buttonPressed(id);
        }
    }

    @Override
    protected void okPressed() {
        if (made.isPresent()) {
            made.get().data().setBlank(blank.getText().isBlank() ? null : blank.getText().strip());
            attempt(() -> session.change(edits -> edits.setFit(made.get().data()), ""));
        }
    }

    private interface Work {
        void run() throws FileProblemException;
    }

    private void attempt(Work work) {
        try {
            work.run();
            super.okPressed();
        } catch (FileProblemException e) {
            MessageDialog.openError(getShell(), "That cannot be done", e.problem().message());
        }
    }
}
