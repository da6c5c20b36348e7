package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.design.edit.RowEntry;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Rows;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.handlers.PasteHandler;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.LinkText;

/**
 * A table of measured places inside the form: a line with the number of places, opened into its rows. Cells are number
 * fields; Enter goes on to the next row, a paste fills rows from the cell on.
 */
public final class RowsTable {
    private final FormPlan.Measured item;
    private final FormContext context;
    private final RowEdits edits;
    private final LinkText head;
    private final Composite body;
    private final Composite foot;
    private final Label trouble;
    private final List<Label> heads = new ArrayList<>();
    private final List<RowCells> rows = new ArrayList<>();
    private final Set<String> openTables;
    private boolean open;

    /**
     * A table, closed unless it was opened before.
     *
     * @param parent where it goes, a grid of two columns
     * @param item the table
     * @param context its form
     * @param openTables the paths of tables that are open; kept up to date
     */
    public RowsTable(Composite parent, FormPlan.Measured item, FormContext context, Set<String> openTables) {
        this.openTables = openTables;
        this.item = item;
        this.context = context;
        this.edits = new RowEdits(context, item);
        head = new LinkText(parent, context.look(), "", Size.BODY);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        wide.horizontalIndent = 16;
        head.setLayoutData(wide);
        head.setToolTipText(item.table().help());
        head.setData("culm.table", item.path());
        head.onClick(() -> open(!open));
        body = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(item.table().columns().size() + 1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        layout.horizontalSpacing = 4;
        body.setLayout(layout);
        GridData below = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        below.horizontalIndent = 20;
        below.exclude = true;
        body.setLayoutData(below);
        body.setVisible(false);
        context.look().dress(body, Role.PAPER, Role.INK);
        for (Parameter column : item.table().columns()) {
            heading(column);
        }
        heading(null);
        foot = foot();
        trouble = new Label(body, SWT.WRAP);
        show(openTables.contains(item.path()));
    }

    /** What can be done with all rows. */
    private Composite foot() {
        Composite line = new Composite(body, SWT.NONE);
        context.look().dress(line, Role.PAPER, Role.INK);
        RowLayout layout = new RowLayout();
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.spacing = 12;
        line.setLayout(layout);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, item.table().columns().size() + 1, 1));
        link(line, "add a row", "Adds a row at the end; Insert adds one below the row with the focus", () -> add(rows.size() - 1));
        link(line, "sort", "Sorts the rows by their place", this::sort);
        link(line, "paste", "Takes the place of all rows by what was copied from a spreadsheet", this::pasteAll);
        return line;
    }

    private void pasteAll() {
        if (rows.isEmpty()) {
            PasteHandler.text(body.getDisplay()).ifPresent(text -> paste(0, 0, text));
        } else {
            PasteHandler.pasteInto(rows.get(0).first());
        }
    }

    private void link(Composite line, String words, String help, Runnable todo) {
        LinkText link = new LinkText(line, context.look(), words, Size.SMALL);
        link.setToolTipText(help);
        link.onClick(todo);
        link.setData("culm.rows", item.path() + " " + words);
    }

    private void heading(Parameter column) {
        Label label = new Label(body, SWT.RIGHT);
        label.setFont(context.look().font(Size.SMALL, SWT.NORMAL));
        context.look().dress(label, Role.PAPER, Role.QUIET);
        GridData data = new GridData(SWT.FILL, SWT.END, column != null, false);
        data.widthHint = column == null ? 16 : 60;
        label.setLayoutData(data);
        if (column != null) {
            label.setToolTipText(column.help());
            heads.add(label);
        }
    }

    /** The words of each column, and below them its unit. */
    private void sayHeads() {
        for (int c = 0; c < heads.size(); c++) {
            Parameter column = columns().get(c);
            String sign = form(column).sign();
            String text = sign.isEmpty() ? column.label() : column.label() + "\n" + sign;
            if (!text.equals(heads.get(c).getText())) {
                heads.get(c).setText(text);
            }
        }
    }

    /** Opens or closes the rows. */
    public void open(boolean now) {
        if (now) {
            openTables.add(item.path());
        } else {
            openTables.remove(item.path());
        }
        show(now);
        show();
        relayout();
    }

    private void show(boolean now) {
        open = now;
        ((GridData) body.getLayoutData()).exclude = !open;
        body.setVisible(open);
    }

    private void relayout() {
        body.getParent().layout(true, true);
        context.fit();
    }

    /** Shows its rows as they are now. */
    public void show() {
        List<RowEntry> now;
        try {
            now = edits.rows();
        } catch (FileProblemException e) {
            head.say(e.problem().sentence());
            return;
        }
        head.say((open ? "▾ " : "▸ ") + item.label() + ", " + now.size() + (now.size() == 1 ? " row" : " rows"));
        if (!open) {
            return;
        }
        sayHeads();
        foot.setVisible(!context.locked());
        boolean resized = rows.size() != now.size();
        while (rows.size() > now.size()) {
            rows.remove(rows.size() - 1).dispose();
        }
        while (rows.size() < now.size()) {
            rows.add(new RowCells(body, this, rows.size()));
        }
        foot.moveBelow(null);
        trouble.moveBelow(null);
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(now.get(i), outOfOrder(now, i));
        }
        if (resized) {
            say("");
            relayout();
        }
    }

    private boolean outOfOrder(List<RowEntry> now, int i) {
        String place = item.table().columns().get(0).id();
        return i > 0 && now.get(i).cells().get(place).orElse(0) <= now.get(i - 1).cells().get(place).orElse(0);
    }

    FormContext context() {
        return context;
    }

    List<Parameter> columns() {
        return item.table().columns();
    }

    NumberForm form(Parameter column) {
        return edits.form(column);
    }

    String path(int row, Parameter column) {
        String word = item.path().substring(0, item.path().indexOf('.'));
        return word + "." + Rows.path(item.table().id(), row, column.id());
    }

    /** A cell's text was entered. @return whether it could be used */
    boolean enter(int row, Parameter column, String typed) {
        return run(() -> {
            double value = form(column).parse(typed);
            java.util.Optional<String> refused = form(column).refuse(column, value);
            if (refused.isPresent()) {
                throw new NumberFormatException(refused.get());
            }
            context.change(e -> e.setValue(path(row, column), value), column.label() + " in row " + (row + 1));
        });
    }

    void step(int row, Parameter column, double to) {
        if (column.refuse(to).isEmpty()) {
            run(() -> context.step(path(row, column), to, column.label() + " in row " + (row + 1)));
        }
    }

    void goTo(int row, int column) {
        if (row >= 0 && row < rows.size()) {
            rows.get(row).focus(column);
        }
    }

    void add(int after) {
        if (run(() -> edits.add(after))) {
            goTo(after + 1, 0);
        }
    }

    void remove(int row) {
        run(() -> edits.remove(row));
    }

    void sort() {
        run(edits::sort);
    }

    /** Pastes from a cell on. @return whether the text was more than one number, pasted or refused */
    boolean paste(int row, int column, String text) {
        if (!PastedRows.isTable(text)) {
            return false;
        }
        run(() -> edits.paste(row, column, PastedRows.read(text, columns().subList(column, columns().size()).stream().map(this::form).toList())));
        return true;
    }

    private interface Work {
        void run() throws FileProblemException;
    }

    private boolean run(Work work) {
        try {
            work.run();
            say("");
            return true;
        } catch (NumberFormatException e) {
            say(e.getMessage());
        } catch (FileProblemException e) {
            say(e.problem().message());
        }
        return false;
    }

    private void say(String sentence) {
        if (sentence.equals(trouble.getText())) {
            return;
        }
        GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false, columns().size() + 1, 1);
        data.widthHint = 120;
        trouble.setLayoutData(data);
        trouble.setFont(context.look().font(Size.SMALL, SWT.NORMAL));
        trouble.setBackground(context.look().colour(Role.PAPER));
        trouble.setForeground(context.look().colour(Role.DOES_NOT));
        trouble.setText(sentence);
        relayout();
    }
}
