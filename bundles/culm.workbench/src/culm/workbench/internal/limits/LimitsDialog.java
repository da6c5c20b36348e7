package culm.workbench.internal.limits;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

import culm.blank.Limits;
import culm.geometry.profile.Parameter;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.AskRow;

/** My limits of the studio; the default of each is one click away. */
public final class LimitsDialog extends TitleAreaDialog {
    private final Workshop workshop;
    private final LimitsFile file;
    private final Runnable saved;
    private final Map<String, AskRow> rows = new LinkedHashMap<>();

    /**
     * The dialog for a studio.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param studio the studio
     * @param saved run after the limits were saved
     */
    public LimitsDialog(Shell shell, Workshop workshop, Studio studio, Runnable saved) {
        super(shell);
        this.workshop = workshop;
        this.file = new LimitsFile(workshop, studio);
        this.saved = saved;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("My limits");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("My limits");
        setMessage("What this studio asks of a blank. The defaults are common practice, no source.");
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        area.setLayout(layout);
        Limits now = Limits.STANDARD;
        try {
            now = file.read();
        } catch (FileProblemException e) {
            setMessage(e.problem().message(), IMessageProvider.ERROR);
        }
        for (Map.Entry<String, Parameter> limit : Limits.all().entrySet()) {
            row(area, limit.getKey(), limit.getValue(), now.get(limit.getKey()));
        }
        return area;
    }

    private void row(Composite area, String id, Parameter described, double value) {
        NumberForm form = NumberForm.of(described.quantity(), workshop.units().now(), 0.1);
        AskRow row = new AskRow(area, described.label(), described, form, value, this::check);
        rows.put(id, row);
        Button standard = new Button(area, SWT.PUSH);
        String usual = described.optional() ? "" : form.text(described.standard());
        standard.setText("default " + (usual.isEmpty() ? "none" : usual));
        standard.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        standard.addListener(SWT.Selection, e -> row.control().setText(usual));
    }

    private void check() {
        Optional<String> wrong = wrong();
        setMessage(wrong.orElse("What this studio asks of a blank. The defaults are common practice, no source."),
                wrong.isPresent() ? IMessageProvider.ERROR : IMessageProvider.NONE);
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(wrong.isEmpty());
        }
    }

    private Optional<String> wrong() {
        for (AskRow row : rows.values()) {
            if (row.wrong().isPresent()) {
                return row.wrong();
            }
        }
        double fewest = rows.get(Limits.TURNS_FEWEST).value().get();
        double wanted = rows.get(Limits.TURNS_WANTED).value().get();
        double most = rows.get(Limits.TURNS_MOST).value().get();
        if (fewest > wanted || wanted > most) {
            return Optional.of("The turns wanted are not between the fewest and the most.");
        }
        Optional<Double> shortest = rows.get(Limits.TIE_SHORTEST).value();
        Optional<Double> longest = rows.get(Limits.TIE_LONGEST).value();
        return shortest.isPresent() && longest.isPresent() && shortest.get() > longest.get()
                ? Optional.of("The shortest tie is longer than the longest.") : Optional.empty();
    }

    @Override
    protected void okPressed() {
        Limits limits = Limits.STANDARD;
        for (Map.Entry<String, AskRow> row : rows.entrySet()) {
            Optional<Double> value = row.getValue().value();
            if (value.isPresent() && value.get() != Limits.all().get(row.getKey()).standard()) {
                limits = limits.with(row.getKey(), value.get());
            }
        }
        try {
            file.write(limits);
            saved.run();
            super.okPressed();
        } catch (FileProblemException e) {
            setMessage(e.problem().message(), IMessageProvider.ERROR);
        }
    }
}
