package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import culm.bench.plots.PlotWords;
import culm.explore.Axis;
import culm.explore.VariantHead;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.text.Numbers;
import culm.workbench.internal.look.Look;

/** Which rows of the table are shown: by what is wrong with them, and by one number between two ends. */
final class RowFilter extends Composite {
    private static final int NUMBER = 52;
    private final Look look;
    private final Combo kind;
    private final Combo column;
    private final Text from;
    private final Text to;
    private List<String> rules = List.of();

    RowFilter(Composite parent, Look look, Runnable changed) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        kind = combo("filter", 130, changed);
        column = combo("filter column", 120, changed);
        from = number("filter from", changed);
        Label label = new Label(this, SWT.NONE);
        label.setText("to");
        label.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(label, Role.PAPER, Role.QUIET);
        to = number("filter to", changed);
        kind.setItems("all of them");
        kind.select(0);
    }

    private Combo combo(String name, int width, Runnable changed) {
        Combo combo = new Combo(this, SWT.READ_ONLY);
        combo.setFont(look.font(Size.BODY, SWT.NORMAL));
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = width;
        combo.setLayoutData(data);
        combo.setData("culm.explore", name);
        combo.addListener(SWT.Selection, e -> changed.run());
        return combo;
    }

    private Text number(String name, Runnable changed) {
        Text text = new Text(this, SWT.BORDER | SWT.RIGHT);
        text.setFont(look.font(Size.BODY, SWT.NORMAL));
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = NUMBER;
        text.setLayoutData(data);
        text.setData("culm.explore", name);
        text.setToolTipText("Only rows with this number between the two ends; lengths in mm");
        text.addListener(SWT.Modify, e -> changed.run());
        return text;
    }

    /** Offers what variants have. */
    void offer(VariantHead head) {
        rules = head.rules();
        List<String> kinds = new ArrayList<>(List.of("all of them", "those that pass", "those that fail"));
        rules.forEach(r -> kinds.add("fails: " + PlotWords.rules(List.of(r))));
        put(kind, kinds, 0);
        List<String> columns = new ArrayList<>(head.axes().stream().map(Axis::label).toList());
        columns.addAll(List.of("turns left", "sides close at", "open at the top"));
        put(column, columns, head.axes().size());
    }

    private static void put(Combo combo, List<String> items, int first) {
        if (!List.of(combo.getItems()).equals(items)) {
            combo.setItems(items.toArray(String[]::new));
            combo.select(first);
        }
    }

    /** The rows of an order that pass. */
    RowOrder of(RowOrder order) {
        int at = Math.max(0, kind.getSelectionIndex());
        RowOrder.Kind which = RowOrder.Kind.values()[Math.min(at, 3)];
        return order.filtered(which, at < 3 ? "" : rules.get(at - 3), Math.max(0, column.getSelectionIndex()), end(from), end(to));
    }

    private double end(Text text) {
        try {
            double value = text.getText().isBlank() ? Double.NaN : Numbers.parseTyped(text.getText().strip());
            text.setForeground(look.colour(Role.INK));
            return value;
        } catch (NumberFormatException e) {
            text.setForeground(look.colour(Role.DOES_NOT));
            return Double.NaN;
        }
    }
}
