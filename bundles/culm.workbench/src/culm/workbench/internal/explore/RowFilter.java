package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.plots.PlotWords;
import culm.explore.Axis;
import culm.explore.VariantHead;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.Quantity;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;

/** Which rows of the table are shown: by what is wrong with them, and by one number between two ends. */
final class RowFilter extends Composite {
    private final Look look;
    private final Combo kind;
    private final Combo column;
    private final RowFilterEnd from;
    private final RowFilterEnd to;
    private Optional<VariantsFound> found = Optional.empty();
    private List<String> rules = List.of();

    RowFilter(Composite parent, Look look, Units units, Runnable changed) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        kind = combo("filter", 130, changed);
        column = combo("filter column", 120, () -> {
            narrowed();
            changed.run();
        });
        from = new RowFilterEnd(this, look, units, "filter from", changed);
        Label label = new Label(this, SWT.NONE);
        label.setText("to");
        label.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(label, Role.PAPER, Role.QUIET);
        to = new RowFilterEnd(this, look, units, "filter to", changed);
        units.onChange(this, this::rewrite);
        kind.setItems("all of them");
        kind.select(0);
    }

    /** Another number is narrowed: what stands there is meant for it. */
    private void narrowed() {
        from.taken();
        to.taken();
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

    /** Offers what variants have. */
    void offer(VariantsFound now) {
        VariantHead head = now.table().head();
        found = Optional.of(now);
        rules = head.rules();
        List<String> kinds = new ArrayList<>(List.of("all of them", "those that pass", "those that fail"));
        rules.forEach(r -> kinds.add("not passed: " + PlotWords.rules(List.of(r))));
        put(kind, kinds, 0);
        List<String> columns = new ArrayList<>(head.axes().stream().map(Axis::label).toList());
        columns.addAll(List.of("turns left", "sides close at", "open at the top"));
        if (put(column, columns, head.axes().size())) {
            narrowed();
        }
    }

    /** @return whether others were offered before */
    private static boolean put(Combo combo, List<String> items, int first) {
        boolean others = !List.of(combo.getItems()).equals(items);
        if (others) {
            combo.setItems(items.toArray(String[]::new));
            combo.select(first);
        }
        return others;
    }

    /** The rows of an order that pass. */
    RowOrder of(RowOrder order) {
        int at = Math.max(0, kind.getSelectionIndex());
        RowOrder.Kind which = RowOrder.Kind.values()[Math.min(at, 3)];
        return order.filtered(which, at < 3 ? "" : rules.get(at - 3), Math.max(0, column.getSelectionIndex()), from.value(this::form), to.value(this::form));
    }

    /** How a number of the chosen column is shown and typed. */
    private NumberForm form(LengthUnit unit) {
        return found.map(f -> f.form(Math.max(0, column.getSelectionIndex()), unit)).orElse(new NumberForm(Quantity.COUNT, unit, 1));
    }

    private void rewrite() {
        from.rewrite(this::form);
        to.rewrite(this::form);
    }
}
