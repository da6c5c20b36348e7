package culm.workbench.internal.bench.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.batch.BatchModel;
import culm.bench.batch.BatchPlanner;
import culm.bench.batch.Caliper;
import culm.bench.batch.SplitBy;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.Quantity;
import culm.model.Batch;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.BenchSession;
import culm.workbench.internal.bench.DesignChoice;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NumberField;

/** What is said once for a whole batch: its design, the caliper, where the wrap stops, how it is split; and how the table is filled. */
final class BatchSetup extends Composite {
    private static final double MOST_CALIPER = 1;
    private static final double MOST_BELOW = 20;
    private static final NumberForm TURNS = NumberForm.of(Quantity.COUNT, LengthUnit.MM, 0);
    private final Workshop workshop;
    private final BenchSession<Batch> session;
    private final BatchEdits edits;
    private final BatchRows rows;
    private final DesignChoice design;
    private final NumberField caliper;
    private final NumberField below;
    private final List<LinkText> repeats = new ArrayList<>();
    private final LinkText across;
    private final LinkText down;
    private final NumberField step;
    private final NumberField margin;
    private Composite line;
    private java.util.function.Consumer<String> say = sentence -> { };

    BatchSetup(Composite parent, BenchSession<Batch> session, BatchEdits edits, BatchRows rows, Runnable changed) {
        super(parent, SWT.NONE);
        this.workshop = session.workshop();
        this.session = session;
        this.edits = edits;
        this.rows = rows;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 14;
        layout.marginHeight = 2;
        layout.verticalSpacing = 2;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        line = line(7);
        words("for", "The design these staples are meant for: its cane, its thread, my limits.");
        design = new DesignChoice(line, workshop, session.studio(), session.file(), edits::design);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 130;
        design.control().setLayoutData(wide);
        words("readings", "How many readings of each length have a column. Read again what is in doubt.");
        Composite counts = new Composite(line, SWT.NONE);
        GridLayout row = new GridLayout(3, false);
        row.marginWidth = 0;
        row.marginHeight = 0;
        row.horizontalSpacing = 0;
        counts.setLayout(row);
        workshop.look().dress(counts, Role.PAPER, Role.INK);
        for (int i = 1; i <= 3; i++) {
            int count = i;
            LinkText link = new LinkText(counts, workshop.look(), String.valueOf(i), Size.BODY);
            link.setToolTipText(i == 1 ? "one reading each" : i + " readings each");
            link.onClick(() -> {
                rows.repeats(count);
                changed.run();
            });
            repeats.add(link);
        }
        words("Enter goes", "Along each staple, or down one column: all lengths first, then the tops on the mandrel.");
        across = link("across", false, changed);
        down = link("down", true, changed);
        line = line(8);
        words("caliper ±", Caliper.HELP);
        caliper = field("caliper", typed -> number(typed, form(), 0, MOST_CALIPER, "", edits::caliper));
        words("wrap stops below top", "How far the wrap stops below each staple's own top; without it as in the design.");
        below = field("below", typed -> number(typed, form(), 0, MOST_BELOW, "", edits::wrapBelowTop));
        words("ties in steps of", sentence(BatchPlanner.STEP_HELP));
        step = field("step", typed -> number(typed, form(), BatchPlanner.LEAST_STEP, BatchPlanner.MOST_STEP, "", edits::tieStep));
        words("turns to spare", sentence(BatchPlanner.MARGIN_HELP));
        margin = field("margin", typed -> number(typed, TURNS, 0, BatchPlanner.MOST_MARGIN, " turns", edits::turnsToSpare));
    }

    private Composite line(int columns) {
        Composite made = new Composite(this, SWT.NONE);
        GridLayout row = new GridLayout(columns, false);
        row.marginWidth = 0;
        row.marginHeight = 0;
        row.horizontalSpacing = 6;
        made.setLayout(row);
        made.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        workshop.look().dress(made, Role.PAPER, Role.INK);
        return made;
    }

    private static String sentence(String help) {
        return Character.toUpperCase(help.charAt(0)) + help.substring(1) + ".";
    }

    private void words(String text, String help) {
        Label label = new Label(line, SWT.NONE);
        label.setText(text);
        label.setToolTipText(help);
        label.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, Role.QUIET);
    }

    private NumberField field(String path, java.util.function.Predicate<String> enter) {
        NumberField field = new NumberField(line, workshop.look());
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = 72;
        field.setLayoutData(data);
        field.control().setData("culm.path", path);
        field.onEnter(enter);
        return field;
    }

    private LinkText link(String words, boolean goesDown, Runnable changed) {
        LinkText link = new LinkText(line, workshop.look(), words, Size.BODY);
        link.onClick(() -> {
            rows.down(goesDown);
            changed.run();
        });
        return link;
    }

    /** Who is told what cannot be taken. */
    void onSay(java.util.function.Consumer<String> todo) {
        say = todo;
    }

    private NumberForm form() {
        return NumberForm.of(Quantity.LENGTH, workshop.units().now(), 0);
    }

    private boolean number(String typed, NumberForm form, double least, double most, String things, DoubleFunction<Optional<String>> take) {
        Optional<String> wrong;
        try {
            double value = form.parse(typed);
            wrong = value >= least && value <= most ? take.apply(value)
                    : Optional.of("It lies between " + form.range(least, most, " and ") + things + ".");
        } catch (NumberFormatException e) {
            wrong = Optional.of(e.getMessage());
        }
        say.accept(wrong.orElse(""));
        return wrong.isEmpty();
    }

    /** Shows the batch as it is now. @param wrapBelow what holds where the batch does not say */
    void show(double wrapBelow) {
        Batch batch = edits.batch();
        design.show(batch.getDesign());
        boolean said = batch.getCaliperError() != null && batch.getCaliperError().isSetValue();
        caliper.show(form().text(said ? batch.getCaliperError().getValue() : Caliper.ASSUMED.largestError()), said ? NumberField.Origin.MEASURED : NumberField.Origin.ASSUMED, false);
        boolean stops = batch.getWrapBelowTop() != null && batch.getWrapBelowTop().isSetValue();
        below.show(form().text(stops ? batch.getWrapBelowTop().getValue() : wrapBelow), stops ? NumberField.Origin.MEASURED : NumberField.Origin.ASSUMED, false);
        boolean locked = session.readOnly().isPresent();
        caliper.lock(locked);
        below.lock(locked);
        step.lock(locked);
        margin.lock(locked);
        design.control().setEnabled(!locked);
        SplitBy by = BatchModel.splitBy(batch);
        step.show(form().text(by.step()), batch.getTieStep() == null ? NumberField.Origin.ASSUMED : NumberField.Origin.MEASURED, false);
        margin.show(TURNS.text(by.margin()), batch.getTurnsToSpare() == null ? NumberField.Origin.ASSUMED : NumberField.Origin.MEASURED, false);
        for (int i = 0; i < repeats.size(); i++) {
            repeats.get(i).chosen(i + 1 == rows.repeats());
        }
        across.chosen(!rows.down());
        down.chosen(rows.down());
        layout(true, true);
    }
}
