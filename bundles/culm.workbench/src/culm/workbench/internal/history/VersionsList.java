package culm.workbench.internal.history;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import culm.figures.Role;
import culm.figures.Size;
import culm.history.Version;
import culm.workbench.internal.look.Look;

/** The versions of a studio, the newest first; above them what is not kept yet. */
final class VersionsList {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH).withZone(ZoneId.systemDefault());
    private static final int WHEN_WIDTH = 140;
    private static final int WHO_WIDTH = 90;
    private final Table table;
    private HistoryShown shown = HistoryShown.OFF;

    VersionsList(Composite parent, Look look, Runnable chosen) {
        table = new Table(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.VIRTUAL | SWT.FULL_SELECTION);
        table.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(table, Role.PAPER, Role.INK);
        column(WHEN_WIDTH);
        column(WHO_WIDTH);
        TableColumn what = column(200);
        table.addListener(SWT.Resize, e -> what.setWidth(Math.max(120, table.getClientArea().width - WHEN_WIDTH - WHO_WIDTH - 4)));
        table.addListener(SWT.SetData, e -> {
            TableItem item = (TableItem) e.item;
            Optional<Version> version = at(table.indexOf(item));
            item.setText(version.map(v -> new String[] { WHEN.format(v.when()), v.who(), v.title(WHEN) }).orElse(new String[] { "now", "", "not kept yet" }));
        });
        table.addListener(SWT.Selection, e -> chosen.run());
    }

    private TableColumn column(int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setWidth(width);
        return column;
    }

    private boolean hasUnkept() {
        return !shown.unkept().isEmpty();
    }

    private Optional<Version> at(int row) {
        int index = hasUnkept() ? row - 1 : row;
        return index < 0 || index >= shown.versions().size() ? Optional.empty() : Optional.of(shown.versions().get(index));
    }

    void show(HistoryShown now) {
        Optional<Version> before = chosen();
        shown = now;
        table.setItemCount(now.versions().size() + (hasUnkept() ? 1 : 0));
        table.clearAll();
        int again = before.map(now.versions()::indexOf).orElse(-1);
        if (again >= 0) {
            table.setSelection(again + (hasUnkept() ? 1 : 0));
        } else if (table.getItemCount() > 0) {
            table.setSelection(0);
        }
    }

    /** {@return the version that is chosen; empty for what is not kept yet} */
    Optional<Version> chosen() {
        return at(table.getSelectionIndex());
    }

    /** {@return the one before the chosen one} */
    Optional<Version> before() {
        return at(table.getSelectionIndex() + 1);
    }

    void choose(int row) {
        table.setSelection(row);
    }

    Table table() {
        return table;
    }

    static String note(Version version) {
        return version.note(WHEN);
    }

    static String when(Version version) {
        return WHEN.format(version.when());
    }
}
