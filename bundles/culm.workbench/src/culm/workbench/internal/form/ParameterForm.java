package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import culm.blank.Tolerance;
import culm.blank.rules.Finding;
import culm.design.edit.RowEntry;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.parts.PartLink;
import culm.workbench.internal.sharing.FileSession.Change;
import culm.workbench.internal.widgets.LinkText;

/** The numbers of a design: what a maker can measure first, in the order of the bench, the rest under more. */
public final class ParameterForm extends Composite implements FormContext {
    private static final int PART_ROOM = 116;
    private final Workshop workshop;
    private final DesignSession session;
    private final ScrolledComposite scroll;
    private final Details details;
    private final Set<String> opened = new HashSet<>();
    private final Set<String> openTables = new HashSet<>();
    private final List<NumberRow> rows = new ArrayList<>();
    private final List<RowsTable> tables = new ArrayList<>();
    private final List<PartLink> partLinks = new ArrayList<>();
    private final Consumer<FileProblemException> refused;
    private FormPlan plan = new FormPlan(List.of());
    private Composite page;

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
        details = new Details(this, this);
        details.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        scroll.addListener(SWT.Resize, e -> fit());
        Runnable unitsEnd = workshop.units().onChange(this::show);
        addListener(SWT.Dispose, e -> unitsEnd.run());
        rebuild();
    }

    /** Shows the design as it is now. */
    public void show() {
        rebuild();
        rows.forEach(NumberRow::show);
        tables.forEach(RowsTable::show);
        partLinks.forEach(PartLink::show);
        details.show();
    }

    private void rebuild() {
        FormPlan now = session.blank().map(b -> FormPlan.of(b.blank())).orElse(plan.sections().isEmpty() ? FormPlan.PARTS : plan);
        if (now.equals(plan) && page != null) {
            return;
        }
        plan = now;
        build();
    }

    private void build() {
        Optional<String> focused = rows.stream().filter(r -> r.field().control().isFocusControl()).map(r -> r.item().path()).findFirst();
        Composite old = page;
        rows.clear();
        tables.clear();
        partLinks.clear();
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
        plan.sections().forEach(this::section);
        scroll.setContent(page);
        if (old != null) {
            // Not now: one of its fields may be what caused this.
            old.setVisible(false);
            getDisplay().asyncExec(old::dispose);
        }
        rows.forEach(NumberRow::show);
        tables.forEach(RowsTable::show);
        fit();
        focused.ifPresent(this::focus);
    }

    private void section(FormPlan.Section section) {
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
        whole.verticalIndent = rows.isEmpty() ? 0 : 6;
        head.setLayoutData(whole);
        Label title = new Label(head, SWT.NONE);
        title.setText(section.title());
        title.setFont(look().font(Size.BODY, SWT.BOLD));
        look().dress(title, Role.PAPER, Role.INK);
        section.parts().forEach(part -> partLinks.add(new PartLink(head, session, part, PART_ROOM / section.parts().size(), refused)));
        if (!section.more().isEmpty() || !section.parts().isEmpty()) {
            LinkText more = new LinkText(head, look(), open ? "less" : "more", Size.SMALL);
            more.setLayoutData(new GridData(SWT.END, SWT.END, true, false));
            more.onClick(() -> open(section.title(), !open));
            more.setData("culm.more", section.title());
        }
        section.first().forEach(this::item);
        if (open) {
            section.more().forEach(this::item);
            section.parts().forEach(part -> new PartChoices(page, part, this, workshop, session));
        }
    }

    private void item(FormPlan.Item item) {
        if (item instanceof FormPlan.Number number) {
            rows.add(new NumberRow(page, number, this));
        } else if (item instanceof FormPlan.Measured measured) {
            RowsTable table = new RowsTable(page, measured, this, openTables);
            tables.add(table);
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
        rows.stream().filter(r -> r.item().path().equals(path)).findFirst().ifPresent(r -> r.field().setFocus());
    }

    /** Puts the focus into the first field. */
    public void focusFirst() {
        rows.stream().findFirst().ifPresent(r -> r.field().setFocus());
    }

    /** Says of the number that has the focus that it was measured, or assumed when it was measured. */
    public void toggleMeasured() {
        rows.stream().filter(r -> r.field().control().isFocusControl()).findFirst()
                .ifPresent(r -> details.measured(!r.tolerance().measured()));
    }

    @Override
    public void fit() {
        if (page != null && !page.isDisposed()) {
            int width = scroll.getClientArea().width;
            page.setSize(page.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT));
        }
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
    public List<Finding> findings() {
        return session.shown().findings();
    }

    @Override
    public List<RowEntry> rows(String path) throws FileProblemException {
        return ModelRows.of(session, path);
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
        reveal(row.field());
    }

    private void reveal(Control control) {
        int top = control.getLocation().y;
        int bottom = top + control.getSize().y;
        int origin = scroll.getOrigin().y;
        int height = scroll.getClientArea().height;
        if (top < origin || bottom > origin + height) {
            scroll.setOrigin(0, top < origin ? top - 30 : bottom - height + 6);
        }
    }

    @Override
    public void refused(NumberRow row, String sentence) {
        details.refused(row, sentence);
        row.show();
    }
}
