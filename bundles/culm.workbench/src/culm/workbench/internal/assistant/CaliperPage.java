package culm.workbench.internal.assistant;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.form.FormPlan;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.AskRow;

/** Asks what a caliper and a mandrel tell; what is left empty is assumed, and the field says what. */
final class CaliperPage extends WizardPage {
    /** What stands above and below the fields, buttons and the window's own frame included, points. */
    private static final int AROUND = 370;
    private final Workshop workshop;
    private final List<FormPlan.Number> asked;
    private final Map<String, AskRow> rows = new LinkedHashMap<>();
    private Label assumed;

    CaliperPage(Workshop workshop) {
        super("caliper");
        this.workshop = workshop;
        this.asked = DesignMaker.asked(workshop.bridge().profiles());
        setTitle("A caliper and a mandrel: what is left empty is assumed");
        setDescription("Measure what you can, in this order. What is left empty is assumed.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite outer = new Composite(parent, SWT.NONE);
        outer.setLayout(new GridLayout());
        ScrolledComposite scroll = new ScrolledComposite(outer, SWT.V_SCROLL);
        GridData tall = new GridData(SWT.FILL, SWT.FILL, true, true);
        scroll.setLayoutData(tall);
        scroll.setScrollbarsMode(SWT.NONE); // one that hides would leave a row cut with no sign of more
        scroll.setExpandHorizontal(true);
        Composite area = new Composite(scroll, SWT.NONE);
        GridLayout beside = new GridLayout(2, true);
        beside.marginWidth = 0;
        beside.marginHeight = 0;
        area.setLayout(beside);
        Composite first = column(area);
        Composite second = column(area);
        for (FormPlan.Number number : asked) {
            NumberForm form = NumberForm.of(number.parameter().quantity(), workshop.units().now(), number.parameter().tolerance());
            AskRow row = new AskRow(number.path().matches("(staple|gouge)\\..*") ? first : second, number.label(), number.parameter(), form, Double.NaN, this::check);
            row.mayBeEmpty(hint(number, form));
            row.control().setData("culm.ask", number.path());
            row.control().addListener(SWT.FocusIn, e -> setMessage(form.help(number.parameter())));
            rows.put(number.path(), row);
        }
        scroll.setContent(area);
        area.setSize(area.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        tall.heightHint = Math.min(area.getSize().y, parent.getMonitor().getClientArea().height - AROUND);
        assumed = new Label(outer, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.END, true, false);
        wide.widthHint = 400;
        wide.heightHint = 70; // four lines: when nothing is typed, all is named
        assumed.setLayoutData(wide);
        setControl(outer);
        check();
    }

    /** What is taken where nothing is typed. */
    private static String hint(FormPlan.Number number, NumberForm form) {
        return isFinished(number) ? "tie less " + form.text(DesignMaker.FINISHED_BELOW) : number.parameter().optional() ? "none" : form.text(number.parameter().standard());
    }

    private static boolean isFinished(FormPlan.Number number) {
        return number.path().equals(Inputs.FINISHED);
    }

    private static Composite column(Composite parent) {
        Composite column = new Composite(parent, SWT.NONE);
        column.setLayout(new GridLayout(2, false));
        column.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        return column;
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            rows.values().iterator().next().control().setFocus();
        }
    }

    private void check() {
        Optional<String> wrong = rows.values().stream().flatMap(r -> r.wrong().stream()).findFirst();
        setErrorMessage(wrong.orElse(null));
        List<String> open = asked.stream().filter(n -> rows.get(n.path()).value().isEmpty() && rows.get(n.path()).wrong().isEmpty() && (!n.parameter().optional() || isFinished(n))).map(FormPlan.Number::label).toList();
        if (assumed != null) {
            assumed.setText(open.isEmpty() ? "Nothing of this is assumed." : "Assumed: " + String.join("; ", open) + ". Swelling and loss under the thread are assumed too.");
        }
        setPageComplete(wrong.isEmpty());
    }

    Map<String, Double> measured() {
        Map<String, Double> measured = new LinkedHashMap<>();
        rows.forEach((path, row) -> row.value().ifPresent(v -> measured.put(path, v)));
        return measured;
    }
}
