package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.design.edit.RowEntry;
import culm.figures.Size;
import culm.geometry.profile.Parameter;
import culm.workbench.internal.handlers.PasteHandler;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NumberField;
import culm.workbench.internal.widgets.NumberField.Origin;

/** The fields of one row of measured places. */
final class RowCells {
    private final RowsTable table;
    private final int row;
    private final List<NumberField> fields = new ArrayList<>();
    private final LinkText remove;
    private RowEntry shown;

    RowCells(Composite parent, RowsTable table, int row) {
        this.table = table;
        this.row = row;
        for (int c = 0; c < table.columns().size(); c++) {
            fields.add(field(parent, c));
        }
        remove = new LinkText(parent, table.context().look(), "×", Size.BODY);
        remove.setToolTipText("Remove this row (Ctrl+Delete)");
        remove.onClick(() -> table.remove(row));
        remove.setLayoutData(new GridData(SWT.CENTER, SWT.CENTER, false, false));
    }

    private NumberField field(Composite parent, int c) {
        Parameter column = table.columns().get(c);
        NumberField field = new NumberField(parent, table.context().look());
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 60;
        field.setLayoutData(data);
        field.onEnter(typed -> table.enter(row, column, typed));
        field.onStep(hundredths -> step(column, hundredths));
        field.control().setData("culm.path", table.path(row, column));
        Predicate<String> paste = text -> table.paste(row, c, text);
        field.control().setData(PasteHandler.KEY, paste);
        field.control().addListener(SWT.KeyDown, e -> key(e, c));
        field.control().setMenu(menu(field));
        return field;
    }

    private void key(Event e, int c) {
        if (e.keyCode == SWT.DEL && (e.stateMask & SWT.MOD1) != 0) {
            table.remove(row);
            table.goTo(Math.max(0, row - 1), c);
        } else if (e.keyCode == SWT.INSERT) {
            table.add(row);
        } else if (e.keyCode == SWT.PAGE_DOWN || e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR) {
            table.goTo(row + 1, c);
        } else if (e.keyCode == SWT.PAGE_UP) {
            table.goTo(row - 1, c);
        }
    }

    private Menu menu(NumberField field) {
        Menu menu = new Menu(field.control());
        item(menu, "Add a row below\tInsert", () -> table.add(row));
        item(menu, "Remove this row\tCtrl+Delete", () -> table.remove(row));
        item(menu, "Sort the rows", table::sort);
        item(menu, "Paste\tCtrl+V", () -> PasteHandler.pasteInto(field.control()));
        return menu;
    }

    private static void item(Menu menu, String text, Runnable todo) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> todo.run());
    }

    private void step(Parameter column, int hundredths) {
        OptionalDouble now = shown.cells().get(column.id());
        now.ifPresent(v -> table.step(row, column, table.form(column).stepped(v, hundredths)));
    }

    void show(RowEntry entry, boolean outOfOrder) {
        shown = entry;
        remove.setVisible(!table.context().locked());
        for (int c = 0; c < fields.size(); c++) {
            Parameter column = table.columns().get(c);
            NumberForm form = table.form(column);
            OptionalDouble value = entry.cells().get(column.id());
            fields.get(c).lock(table.context().locked());
            fields.get(c).show(value.isPresent() ? form.bare(value.getAsDouble()) : "", Origin.MEASURED, c == 0 && outOfOrder);
        }
    }

    /** {@return the control of its first cell} */
    Control first() {
        return fields.get(0).control();
    }

    void focus(int column) {
        fields.get(column).setFocus();
    }

    void dispose() {
        fields.forEach(NumberField::dispose);
        remove.dispose();
    }
}
