package culm.workbench.internal.parts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Tolerance;
import culm.blank.rules.Finding;
import culm.design.edit.RowEntry;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.How;
import culm.model.Part;
import culm.model.Quantity;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.form.Details;
import culm.workbench.internal.form.FormContext;
import culm.workbench.internal.form.FormPlan;
import culm.workbench.internal.form.NumberRow;
import culm.workbench.internal.form.PartRows;
import culm.workbench.internal.form.RowsTable;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.sharing.FileSession.Change;

/** The numbers of one part, edited as in the form of a design. */
final class PartForm extends Composite implements FormContext {
    private final PartsSession session;
    private final ScrolledComposite scroll;
    private final Details details;
    private final Set<String> openTables = new HashSet<>();
    private final List<NumberRow> rows = new ArrayList<>();
    private final List<RowsTable> tables = new ArrayList<>();
    private final List<Runnable> choices = new ArrayList<>();
    private final Label trouble;
    private List<Finding> wrong = List.of();
    private Part part;
    private PartPlan plan;
    private Composite page;

    PartForm(Composite parent, PartsSession session) {
        super(parent, SWT.NONE);
        this.session = session;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        setLayout(layout);
        look().dress(this, Role.PAPER, Role.INK);
        scroll = new ScrolledComposite(this, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.getVerticalBar().setIncrement(24);
        look().dress(scroll, Role.PAPER, Role.INK);
        trouble = new Label(this, SWT.WRAP);
        trouble.setFont(look().font(Size.SMALL, SWT.NORMAL));
        look().dress(trouble, Role.PAPER, Role.DOES_NOT);
        GridData line = new GridData(SWT.FILL, SWT.END, true, false);
        line.widthHint = 200;
        line.horizontalIndent = 20;
        line.exclude = true;
        trouble.setLayoutData(line);
        details = new Details(this, this);
        details.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        scroll.addListener(SWT.Resize, e -> fit());
        Runnable end = session.workshop().units().onChange(this::showNumbers);
        addListener(SWT.Dispose, e -> end.run());
    }

    /** Shows a part as it is now. @param now null for none */
    void show(Part now) {
        PartPlan wanted = now == null ? null : PartPlan.of(now, session.workshop().bridge().profiles());
        if (now != part || wanted != null && !wanted.equals(plan)) {
            part = now;
            plan = wanted;
            build();
        }
        showNumbers();
    }

    private void showNumbers() {
        wrong = part == null ? List.of() : PartCheck.of(part, session.workshop().bridge().profiles());
        String sentence = wrong.stream().map(Finding::text).collect(Collectors.joining(" "));
        if (!sentence.equals(trouble.getText())) {
            trouble.setText(sentence);
            ((GridData) trouble.getLayoutData()).exclude = sentence.isEmpty();
            trouble.setVisible(!sentence.isEmpty());
            layout();
        }
        rows.forEach(NumberRow::show);
        tables.forEach(RowsTable::show);
        choices.forEach(Runnable::run);
        details.show();
    }

    private void build() {
        Composite old = page;
        rows.clear();
        tables.clear();
        choices.clear();
        page = new Composite(scroll, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginLeft = 2;
        layout.marginRight = 10;
        layout.marginHeight = 4;
        layout.verticalSpacing = 3;
        layout.horizontalSpacing = 6;
        page.setLayout(layout);
        look().dress(page, Role.PAPER, Role.INK);
        if (plan != null) {
            plan.items().forEach(this::item);
            choices.addAll(new PartCombos(page, part, this, session.workshop()).shown());
        }
        scroll.setContent(page);
        if (old != null) {
            // Not now: one of its fields may be what caused this.
            old.setVisible(false);
            getDisplay().asyncExec(old::dispose);
        }
        fit();
    }

    private void item(FormPlan.Item item) {
        if (item instanceof FormPlan.Number number) {
            rows.add(new NumberRow(page, number, this));
        } else if (item instanceof FormPlan.Measured measured) {
            openTables.add(measured.path());
            tables.add(new RowsTable(page, measured, this, openTables));
        }
    }

    @Override
    public boolean setFocus() {
        return rows.isEmpty() ? super.setFocus() : rows.get(0).field().setFocus();
    }

    @Override
    public Look look() {
        return session.workshop().look();
    }

    @Override
    public Units units() {
        return session.workshop().units();
    }

    @Override
    public OptionalDouble value(String path) {
        return part == null ? OptionalDouble.empty()
                : session.edits(part).quantity(path).filter(Quantity::isSetValue).map(q -> OptionalDouble.of(q.getValue())).orElse(OptionalDouble.empty());
    }

    @Override
    public Tolerance tolerance(String path) {
        double usual = rows.stream().filter(r -> r.item().path().equals(path)).findFirst().map(r -> r.item().parameter().tolerance()).orElse(0.0);
        return part == null ? new Tolerance(usual, false) : session.edits(part).quantity(path)
                .map(q -> new Tolerance(q.isSetTolerance() ? q.getTolerance() : usual, q.getHow() == How.MEASURED)).orElse(new Tolerance(usual, false));
    }

    @Override
    public List<Finding> findings() {
        return wrong;
    }

    @Override
    public List<RowEntry> rows(String path) {
        return PartRows.of(part, path);
    }

    @Override
    public void change(Change change, String label) throws FileProblemException {
        session.change(part, change, label);
    }

    @Override
    public void step(String path, double to, String label) throws FileProblemException {
        change(edits -> edits.setValue(path, to), label);
    }

    @Override
    public void focused(NumberRow row) {
        details.about(row);
    }

    @Override
    public void fit() {
        if (page != null && !page.isDisposed()) {
            int width = scroll.getClientArea().width;
            page.setSize(page.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT));
        }
    }

    @Override
    public void refused(NumberRow row, String sentence) {
        details.refused(row, sentence);
        row.show();
    }
}
