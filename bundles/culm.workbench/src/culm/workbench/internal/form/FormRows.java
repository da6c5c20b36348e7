package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;

/** The rows of a form, numbers and tables, one below the other; they scroll. */
public final class FormRows {
    /** The margin below the last row, which may be out of sight, points. */
    private static final int SLACK = 4;
    /** Of a row, points; a table is higher. */
    private static final int HIGHEST = 60;
    /** Under which controls that take the focus say what they are. */
    private static final List<String> KEYS = List.of("culm.path", "culm.choice", "culm.more", "culm.partLink", "culm.table");
    private final FormContext context;
    private final ScrolledComposite scroll;
    private final Label below;
    private final Set<String> openTables = new HashSet<>();
    private final List<NumberRow> numbers = new ArrayList<>();
    private final List<RowsTable> tables = new ArrayList<>();
    private Composite page;

    /**
     * No rows yet.
     *
     * @param form where they go; gets a layout of one column
     * @param context the form
     */
    public FormRows(Composite form, FormContext context) {
        this.context = context;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        form.setLayout(layout);
        context.look().dress(form, Role.PAPER, Role.INK);
        scroll = new ScrolledComposite(form, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.getVerticalBar().setIncrement(24);
        context.look().dress(scroll, Role.PAPER, Role.INK);
        scroll.addListener(SWT.Resize, e -> fit());
        scroll.getVerticalBar().addListener(SWT.Selection, e -> hint());
        below = new Label(form, SWT.NONE);
        below.setText("\u25be more below");
        below.setFont(context.look().font(Size.SMALL, SWT.NORMAL));
        context.look().dress(below, Role.PAPER, Role.QUIET);
        GridData under = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        under.horizontalIndent = 18;
        below.setLayoutData(under);
        below.setVisible(false);
    }

    /** The scroll bar hides while nothing is scrolled: words say that there is more. Until something is scrolled, no row is cut above them. */
    private void hint() {
        below.setVisible(page != null && page.getSize().y - scroll.getOrigin().y > scroll.getClientArea().height + SLACK);
        GridData under = (GridData) below.getLayoutData();
        int room = scroll.getClientArea().height + under.verticalIndent;
        int cut = page == null || scroll.getOrigin().y > 0 || page.getSize().y <= room ? 0 : cut(room);
        if (cut != under.verticalIndent) {
            under.verticalIndent = cut;
            below.getParent().layout();
        }
    }

    /** How much of a row that has not all its room can be seen; of an open table a part may be seen. */
    private int cut(int room) {
        return Stream.of(page.getChildren()).filter(Control::getVisible).map(Control::getBounds)
                .filter(row -> row.y < room && row.y + row.height > room && row.height <= HIGHEST).mapToInt(row -> room - row.y).max().orElse(0);
    }

    /**
     * Makes all rows anew.
     *
     * @param fill makes them on the page it is given, a grid of two columns
     */
    public void build(Consumer<Composite> fill) {
        Composite old = page;
        Optional<Control> focused = inside(old);
        numbers.clear();
        tables.clear();
        page = new Composite(scroll, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginLeft = 2;
        layout.marginRight = 10;
        layout.marginHeight = 4;
        layout.verticalSpacing = 3;
        layout.horizontalSpacing = 6;
        page.setLayout(layout);
        context.look().dress(page, Role.PAPER, Role.INK);
        fill.accept(page);
        int origin = scroll.getOrigin().y;
        scroll.setContent(page);
        if (old != null) {
            // Not now: one of its fields may be what caused this.
            old.setVisible(false);
            scroll.getDisplay().asyncExec(old::dispose);
        }
        fit();
        scroll.setOrigin(0, origin);
        hint();
        focused.ifPresent(this::focusAgain);
    }

    /** {@return the control that has the focus, if it is one of these} */
    private static Optional<Control> inside(Composite page) {
        Control focused = Display.getCurrent().getFocusControl();
        for (Control c = focused; c != null; c = c.getParent()) {
            if (c == page) {
                return Optional.of(focused);
            }
        }
        return Optional.empty();
    }

    /** What was chosen or clicked, and made the rows anew, has the focus again: else no key would be heard any more. */
    private void focusAgain(Control old) {
        for (String key : KEYS) {
            Object said = old.getData(key);
            Optional<Control> same = said == null ? Optional.empty() : all(page).filter(c -> said.equals(c.getData(key))).findFirst();
            if (same.isPresent()) {
                same.get().forceFocus();
                return;
            }
        }
        first().ifPresent(row -> row.field().setFocus());
    }

    private static Stream<Control> all(Composite under) {
        return Stream.of(under.getChildren()).flatMap(c -> c instanceof Composite more ? Stream.concat(Stream.of(c), all(more)) : Stream.of(c));
    }

    /** Adds the row of an item. */
    public void add(FormPlan.Item item) {
        if (item instanceof FormPlan.Number number) {
            numbers.add(new NumberRow(page, number, context));
        } else if (item instanceof FormPlan.Measured measured) {
            tables.add(new RowsTable(page, measured, context, openTables));
        }
    }

    /** Lets a table that is still to be added be open from the start. @param path the table's */
    public void open(String path) {
        openTables.add(path);
    }

    /** Shows every number and table as it is now. */
    public void show() {
        numbers.forEach(NumberRow::changed);
        tables.forEach(RowsTable::show);
    }

    /** Shows the numbers while one is only moved and nothing has changed. */
    public void moved() {
        numbers.forEach(NumberRow::moved);
    }

    /** Gives the rows the room they need. */
    public void fit() {
        if (page != null && !page.isDisposed()) {
            int width = scroll.getClientArea().width;
            page.setSize(page.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT));
            hint();
        }
    }

    /** {@return the first number, if any} */
    public Optional<NumberRow> first() {
        return numbers.stream().findFirst();
    }

    /** {@return the number of a path, if it is there} */
    public Optional<NumberRow> number(String path) {
        return numbers.stream().filter(r -> r.item().path().equals(path)).findFirst();
    }

    /** {@return the number whose field has the focus, if any} */
    public Optional<NumberRow> focused() {
        return numbers.stream().filter(r -> r.field().control().isFocusControl()).findFirst();
    }

    /** Scrolls until a row can be seen. */
    public void reveal(Control control) {
        int top = control.getLocation().y;
        int bottom = top + control.getSize().y;
        int origin = scroll.getOrigin().y;
        int height = scroll.getClientArea().height;
        if (top < origin || bottom > origin + height) {
            scroll.setOrigin(0, top < origin ? top - 30 : bottom - height + 6);
            hint();
        }
    }
}
