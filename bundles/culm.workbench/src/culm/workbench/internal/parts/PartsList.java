package culm.workbench.internal.parts;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.Part;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;
import culm.workbench.internal.widgets.RowIcons;

/** The parts of a file, with a search above them; quick for ten thousand. */
final class PartsList extends Composite {
    /** What the table takes of a line before its words: the icon and the margins, points. */
    static final int BEFORE = 22;
    private final Workshop workshop;
    private final Text search;
    private final Table table;
    private final RowIcons icons;
    private List<Part> all = List.of();
    private List<Part> shown = List.of();
    private Consumer<Part> chosen = p -> { };

    PartsList(Composite parent, Workshop workshop) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        search = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage("search");
        search.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        search.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        TypedText typing = new TypedText(search::setText);
        search.setData(UndoTarget.KEY, typing);
        search.addListener(SWT.Modify, e -> {
            typing.typed(search.getText());
            fill();
        });
        search.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                table().setFocus();
            } else if (e.keyCode == SWT.ESC) {
                search.setText("");
            }
        });
        table = new Table(this, SWT.SINGLE | SWT.V_SCROLL | SWT.VIRTUAL | SWT.FULL_SELECTION);
        table.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(table, Role.PAPER, Role.INK);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        icons = RowIcons.in(table, workshop.look(), workshop.icons(), row -> workshop.icons().get(PartWords.kind(shown.get(row))));
        table.addListener(SWT.SetData, e -> set((TableItem) e.item));
        table.addListener(SWT.Selection, e -> chosen.accept(selected()));
        table.addListener(SWT.Resize, e -> table.clearAll());
        table.addListener(SWT.MouseMove, e -> tell(table.getItem(new Point(e.x, e.y))));
    }

    private Table table() {
        return table;
    }

    private void set(TableItem item) {
        Part part = shown.get(table.indexOf(item));
        item.setText(Clip.middle(PartWords.name(part), workshop.look().measure(), Size.BODY, Math.max(60, table.getClientArea().width - BEFORE)));
        icons.keepRoom(item);
    }

    /** The whole name under the pointer, since a long one is cut. */
    private void tell(TableItem item) {
        String name = item == null ? null : PartWords.name(shown.get(table.indexOf(item)));
        if (!Objects.equals(name, table.getToolTipText())) {
            table.setToolTipText(name);
        }
    }

    void onChosen(Consumer<Part> todo) {
        chosen = todo;
    }

    /** Shows these parts; the one that is chosen stays so. */
    void show(List<Part> now) {
        all = now;
        fill();
    }

    private void fill() {
        Part before = selected();
        String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
        shown = all.stream().filter(p -> (PartWords.name(p) + " " + p.getId() + " " + PartWords.kind(p)).toLowerCase(Locale.ROOT).contains(wanted)).toList();
        table.setItemCount(shown.size());
        table.clearAll();
        int again = again(before);
        if (again >= 0) {
            table.setSelection(again);
        }
    }

    /** The same part, or when another object took its place the one of its id. */
    private int again(Part before) {
        if (before == null || shown.contains(before)) {
            return shown.indexOf(before);
        }
        return shown.stream().filter(p -> p.getId() != null && p.getId().equals(before.getId())).findFirst().map(shown::indexOf).orElse(-1);
    }

    /** {@return the part that is chosen; null for none} */
    Part selected() {
        int index = table.getSelectionIndex();
        return index < 0 || index >= shown.size() ? null : shown.get(index);
    }

    void select(Part part) {
        if (!search.getText().isEmpty() && !shown.contains(part)) {
            search.setText("");
        }
        int index = shown.indexOf(part);
        if (index >= 0) {
            table.setSelection(index);
            table.showSelection();
        }
    }

    @Override
    public boolean setFocus() {
        return table.setFocus();
    }
}
