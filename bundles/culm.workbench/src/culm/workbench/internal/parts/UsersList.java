package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.RowIcons;

/** The designs that use a part; one is opened by a double click or Enter. The heading says how many are out of sight, for a scroll bar may hide. */
final class UsersList extends Composite {
    private final Workshop workshop;
    private final Label heading;
    private final Table table;
    private List<StudioEntry> shown = List.of();
    private boolean chosen;

    UsersList(Composite parent, Workshop workshop, Consumer<Path> open) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        heading = new Label(this, SWT.NONE);
        heading.setFont(workshop.look().font(Size.BODY, SWT.BOLD));
        workshop.look().dress(heading, Role.PAPER, Role.INK);
        heading.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        table = new Table(this, SWT.SINGLE | SWT.V_SCROLL | SWT.VIRTUAL | SWT.FULL_SELECTION);
        table.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(table, Role.PAPER, Role.INK);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        RowIcons icons = RowIcons.in(table, workshop.look(), workshop.icons(), row -> workshop.icons().get("design"));
        table.addListener(SWT.SetData, e -> {
            TableItem item = (TableItem) e.item;
            StudioEntry design = shown.get(table.indexOf(item));
            item.setText(Clip.middle(design.title(), workshop.look().measure(), Size.BODY, Math.max(60, table.getClientArea().width - PartsList.BEFORE)));
            icons.keepRoom(item);
        });
        table.addListener(SWT.Resize, e -> {
            table.clearAll();
            head();
        });
        table.getVerticalBar().addListener(SWT.Selection, e -> head());
        table.addListener(SWT.DefaultSelection, e -> open.accept(shown.get(table.getSelectionIndex()).file()));
    }

    /** {@return the height in which so many rows can be seen} */
    int height(int rows) {
        return heading.computeSize(SWT.DEFAULT, SWT.DEFAULT).y + ((GridLayout) getLayout()).verticalSpacing + table.computeTrim(0, 0, 10, rows * table.getItemHeight()).height;
    }

    /** {@return the height of a row} */
    int line() {
        return table.getItemHeight();
    }

    /** Shows who uses a part. @param id of the part; empty for none */
    void show(StudioIndex index, Path file, String id) {
        List<StudioEntry> now = id.isEmpty() ? List.of() : index.usersOf(file, id).stream().map(u -> u.design()).distinct().toList();
        chosen = !id.isEmpty();
        if (!now.equals(shown)) {
            shown = now;
            table.clearAll();
            table.setItemCount(now.size());
        }
        table.setVisible(!now.isEmpty());
        head();
    }

    private void head() {
        int top = table.getTopIndex();
        int seen = Math.round((float) table.getClientArea().height / table.getItemHeight()); // a row that is cut by a point is seen
        heading.setText(chosen ? words(shown.size(), top, shown.size() - top - seen) : "");
    }

    /** {@return how many use a part, and how many of them are above and below what is seen; below zero as none} */
    static String words(int count, int above, int below) {
        String used = count == 0 ? "No design uses it" : "Used by " + count + (count == 1 ? " design" : " designs");
        return used + (above > 0 ? ", " + above + " above" : "") + (below > 0 ? ", " + below + " more below" : "");
    }

    /** {@return how many use it} */
    int count() {
        return shown.size();
    }
}
