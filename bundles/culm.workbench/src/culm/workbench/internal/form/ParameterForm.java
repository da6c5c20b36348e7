package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Tolerance;
import culm.blank.rules.Finding;
import culm.design.DesignedBlank;
import culm.design.edit.RowEntry;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.parts.PartLink;
import culm.workbench.internal.sharing.FileSession.Change;
import culm.workbench.internal.widgets.LinkText;

/** The numbers of a design: what a maker can measure first, in the order of the bench, the rest under more. */
public final class ParameterForm extends Composite implements FormContext {
    private static final int PART_ROOM = 116;
    private final Workshop workshop;
    private final DesignSession session;
    private final FormRows rows;
    private final Details details;
    private final Set<String> opened = new HashSet<>();
    private final List<PartChoices> choices = new ArrayList<>();
    private final List<List<PartLink>> partLinks = new ArrayList<>();
    private final Consumer<FileProblemException> refused;
    private FormPlan plan = new FormPlan(List.of());
    private Optional<Stand> stand = Optional.empty();

    /**
     * The form of a design.
     *
     * @param parent where it goes
     * @param workshop what the window works with
     * @param session the design
     * @param refused told why something cannot be done
     */
    public ParameterForm(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.refused = refused;
        this.workshop = workshop;
        this.session = session;
        rows = new FormRows(this, this);
        details = new Details(this, this);
        details.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        workshop.units().onChange(this, this::show);
        rebuild();
    }

    /** Shows the design as it is now. */
    public void show() {
        Optional<Stand> now = session.blank().map(b -> new Stand(b, units().now(), locked()));
        if (now.isPresent() && stand.filter(now.get()::same).isPresent()) {
            rows.moved();
            return;
        }
        stand = now;
        rebuild();
        rows.show();
        choices.forEach(PartChoices::show);
        partLinks.forEach(links -> PartLink.show(links, PART_ROOM));
        details.show();
    }

    /** What all but a number that is just moved depends on; rows and names of parts may have to be read from their files. */
    private record Stand(DesignedBlank design, LengthUnit unit, boolean locked) {
        boolean same(Stand other) {
            return design == other.design && unit == other.unit && locked == other.locked;
        }
    }

    private void rebuild() {
        FormPlan now = session.blank().map(b -> FormPlan.of(b.blank())).orElse(plan.sections().isEmpty() ? FormPlan.PARTS : plan);
        if (!now.equals(plan)) {
            plan = now;
            build();
        }
    }

    private void build() {
        choices.clear();
        partLinks.clear();
        rows.build(page -> {
            plan.sections().forEach(section -> section(page, section));
            rows.show();
        });
        details.among(rows);
    }

    private void section(Composite page, FormPlan.Section section) {
        boolean open = opened.contains(section.title());
        Composite head = new Composite(page, SWT.NONE);
        GridLayout across = new GridLayout(2 + section.parts().size(), false);
        across.marginWidth = 0;
        across.marginHeight = 0;
        across.horizontalSpacing = 1;
        head.setLayout(across);
        look().dress(head, Role.PAPER, Role.INK);
        GridData whole = new GridData(SWT.FILL, SWT.END, true, false, 2, 1);
        whole.horizontalIndent = 16;
        whole.verticalIndent = rows.first().isEmpty() ? 0 : 6;
        head.setLayoutData(whole);
        Label title = new Label(head, SWT.NONE);
        title.setText(section.title());
        title.setFont(look().font(Size.BODY, SWT.BOLD));
        look().dress(title, Role.PAPER, Role.INK);
        List<PartLink> links = section.parts().stream().map(part -> new PartLink(head, session, part, refused)).toList();
        PartLink.show(links, PART_ROOM);
        partLinks.add(links);
        if (!section.more().isEmpty() || !section.parts().isEmpty()) {
            LinkText more = new LinkText(head, look(), open ? "less" : "more", Size.SMALL);
            more.setLayoutData(new GridData(SWT.END, SWT.END, true, false));
            more.onClick(() -> open(section.title(), !open));
            more.setData("culm.more", section.title());
        }
        section.first().forEach(rows::add);
        if (open) {
            section.more().forEach(rows::add);
            section.parts().forEach(part -> choices.add(new PartChoices(page, part, this, workshop, session)));
        }
    }

    /**
     * Opens or closes what stands under more.
     *
     * @param title the section's title
     * @param now whether open
     */
    public void open(String title, boolean now) {
        if (now ? opened.add(title) : opened.remove(title)) {
            build();
        }
    }

    /**
     * Puts the focus into a number's field, opening what hides it.
     *
     * @param path the number's path
     */
    public void focus(String path) {
        for (FormPlan.Section section : plan.sections()) {
            if (section.more().stream().anyMatch(i -> i instanceof FormPlan.Number n && n.path().equals(path))) {
                open(section.title(), true);
            }
        }
        rows.number(path).ifPresent(r -> r.field().setFocus());
    }

    /** Puts the focus into the first field. */
    public void focusFirst() {
        rows.first().ifPresent(r -> r.field().setFocus());
    }

    /** Says of the number that has the focus that it was measured, or assumed when it was measured. */
    public void toggleMeasured() {
        rows.focused().ifPresent(r -> details.measured(!r.tolerance().measured()));
    }

    @Override
    public void fit() {
        rows.fit();
    }

    @Override
    public OptionalDouble value(String path) {
        return session.blank().map(b -> b.blank().value(path)).orElse(OptionalDouble.empty());
    }

    @Override
    public OptionalDouble shownValue(String path) {
        return session.gesture().previewing() ? session.shown().blank().map(b -> b.blank().value(path)).orElse(OptionalDouble.empty()) : value(path);
    }

    @Override
    public Tolerance tolerance(String path) {
        return session.blank().map(b -> b.blank().tolerance(path)).orElse(new Tolerance(0, false));
    }

    @Override
    public boolean usual() {
        String instrument = session.design().getInstrument();
        return instrument == null || instrument.isBlank() || instrument.strip().equalsIgnoreCase("oboe");
    }

    @Override
    public List<Finding> findings() {
        return session.shown().findings();
    }

    @Override
    public List<RowEntry> rows(String path) throws FileProblemException {
        return ModelRows.of(session, path);
    }

    @Override
    public boolean locked() {
        return session.readOnly().isPresent();
    }

    @Override
    public void change(Change change, String label) throws FileProblemException {
        session.change(change, label);
    }

    @Override
    public void step(String path, double to, String label) throws FileProblemException {
        session.gesture().step(path, to, label);
    }

    @Override
    public Look look() {
        return workshop.look();
    }

    @Override
    public Units units() {
        return workshop.units();
    }

    @Override
    public void focused(NumberRow row) {
        details.about(row);
        rows.reveal(row.field());
    }

    @Override
    public void refused(NumberRow row, String sentence) {
        details.refused(row, sentence);
        row.show();
    }
}
