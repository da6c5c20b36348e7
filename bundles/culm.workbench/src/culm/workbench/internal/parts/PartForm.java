package culm.workbench.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
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
import culm.workbench.internal.form.FormRows;
import culm.workbench.internal.form.NumberRow;
import culm.workbench.internal.form.PartRows;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.sharing.FileSession.Change;

/** The numbers of one part, edited as in the form of a design. */
final class PartForm extends Composite implements FormContext {
    private static final int WORDS = 170;
    private final PartsSession session;
    private final FormRows rows;
    private final Details details;
    private final Label trouble;
    private List<Finding> wrong = List.of();
    private Part part;
    private PartPlan plan;
    private Optional<PartCombos> choices = Optional.empty();

    PartForm(Composite parent, PartsSession session) {
        super(parent, SWT.NONE);
        this.session = session;
        rows = new FormRows(this, this);
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
        details.waits();
        session.workshop().units().onChange(this, this::showNumbers);
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
        String sentence = units().now().told(wrong).stream().map(Finding::text).collect(Collectors.joining(" "));
        if (!sentence.equals(trouble.getText())) {
            trouble.setText(sentence);
            ((GridData) trouble.getLayoutData()).exclude = sentence.isEmpty();
            trouble.setVisible(!sentence.isEmpty());
            layout();
        }
        rows.show();
        choices.ifPresent(PartCombos::show);
        details.show();
    }

    private void build() {
        choices = Optional.empty();
        rows.build(page -> {
            if (plan != null) {
                plan.items().forEach(this::add);
                choices = Optional.of(new PartCombos(page, part, this, session.workshop(),
                        () -> PartBlank.of(part, session.edits(part), session.workshop().bridge().profiles())));
            }
        });
        details.among(rows);
    }

    private void add(FormPlan.Item item) {
        if (item instanceof FormPlan.Measured measured) {
            rows.open(measured.path());
        }
        rows.add(item);
    }

    @Override
    public boolean setFocus() {
        return rows.first().map(r -> r.field().setFocus()).orElseGet(super::setFocus);
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
    public int roomForWords() {
        return WORDS;
    }

    @Override
    public OptionalDouble value(String path) {
        return part == null ? OptionalDouble.empty()
                : session.edits(part).quantity(path).filter(Quantity::isSetValue).map(q -> OptionalDouble.of(q.getValue())).orElse(OptionalDouble.empty());
    }

    @Override
    public Tolerance tolerance(String path) {
        double usual = rows.number(path).map(r -> r.item().parameter().tolerance()).orElse(0.0);
        return part == null ? new Tolerance(usual, false) : session.edits(part).quantity(path)
                .map(q -> new Tolerance(q.isSetTolerance() ? q.getTolerance() : usual, q.getHow() == How.MEASURED)).orElse(new Tolerance(usual, false));
    }

    @Override
    public boolean usual() {
        return false; // a part does not say for what instrument it is
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
    public boolean locked() {
        return session.readOnly().isPresent();
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
        rows.reveal(row.field());
    }

    @Override
    public void fit() {
        rows.fit();
    }

    @Override
    public void refused(NumberRow row, String sentence) {
        details.refused(row, sentence);
        row.show();
    }
}
