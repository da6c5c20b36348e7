package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.design.edit.Edits;
import culm.design.edit.RowEntry;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Table;
import culm.geometry.shape.MeasuredShape;
import culm.model.Edges;
import culm.model.Moisture;
import culm.model.text.Cells;
import culm.model.WidthsAlong;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.sharing.FileSession.Change;

/** What is chosen of parts, not measured: each a line of words and a list, which shows what is chosen now. */
public final class ChoiceRows {
    private final Composite parent;
    private final FormContext context;
    private final List<Runnable> shown = new ArrayList<>();

    /**
     * No choices yet.
     *
     * @param parent where they go, a grid of two columns
     * @param context the form
     */
    public ChoiceRows(Composite parent, FormContext context) {
        this.parent = parent;
        this.context = context;
    }

    /** Shows what is chosen now. */
    public void show() {
        shown.forEach(Runnable::run);
    }

    /**
     * The kind of a part.
     *
     * @param part the part's word
     * @param types the kinds there are
     * @param now the id of the kind it has; null for none
     * @param places the rows to begin with where it is to be measured at places; empty for the kind's usual ones
     */
    public void kind(String part, List<? extends ProfileType> types, Supplier<String> now, Supplier<Optional<Table>> places) {
        kind("kind of " + part, part, types, now, places);
    }

    /**
     * Whether a gouge is the same all along, and if not, the kind of the one at the end of the cane.
     *
     * @param types the kinds there are
     * @param end the id of the kind it has at the end; null where it is the same
     */
    public void gougeEnd(List<? extends ProfileType> types, Supplier<String> end) {
        row("along the cane", List.of("the same gouge", "another at the end"), List.of(), () -> end.get() == null ? 0 : 1,
                chosen -> chosen == 0 ? Edits::removeGougeEnd : Edits::gougeTwice, "along the cane");
        if (end.get() != null) {
            kind("kind at the end", "gougeEnd", types, end, Optional::empty);
        }
    }

    private void kind(String words, String part, List<? extends ProfileType> types, Supplier<String> now, Supplier<Optional<Table>> places) {
        List<String> ids = types.stream().map(ProfileType::id).toList();
        row(words, types.stream().map(ProfileType::name).toList(), types.stream().map(ProfileType::help).toList(), () -> at(ids, now.get()),
                chosen -> edits -> edits.setProfile(part, types.get(chosen), types.get(chosen) instanceof MeasuredPlaces ? places.get() : Optional.empty()), words + ":");
    }

    /**
     * How the edges of a shape stand.
     *
     * @param now null for none
     * @param inside the inside widths to begin with where they are told by two widths
     */
    public void edges(Supplier<Edges> now, Supplier<List<double[]>> inside) {
        List<Edges> values = List.of(Edges.SQUARE, Edges.RADIAL, Edges.TWO_WIDTHS);
        row("edges", List.of("square to the chord", "along the radius", "two widths"), List.of(), () -> at(values, now.get()),
                chosen -> values.get(chosen) == Edges.TWO_WIDTHS ? edits -> edits.edgesByTwoWidths(entries(inside.get())) : edits -> edits.set("shape", "edges", values.get(chosen)), "edges");
    }

    private static List<RowEntry> entries(List<double[]> rows) {
        List<Parameter> columns = MeasuredShape.TABLE.columns();
        return rows.stream().map(row -> RowEntry.of(Cells.NONE.with(columns.get(0).id(), row[0]).with(columns.get(1).id(), row[1]))).toList();
    }

    /** Along what the widths of a shape were measured. @param now null for none */
    public void widthsAlong(Supplier<WidthsAlong> now) {
        choice("widths measured", "shape", "widthsAlong", List.of("straight across", "around the bark"), List.of(WidthsAlong.CHORD, WidthsAlong.ARC), now);
    }

    /** Whether a part was measured on dry or on wet cane. @param now null for none */
    public void moisture(String words, String part, Supplier<Moisture> now) {
        choice(words, part, "moisture", List.of("dry", "wet"), List.of(Moisture.DRY, Moisture.WET), now);
    }

    /**
     * A choice of some values.
     *
     * @param words what is chosen
     * @param element the element that holds it
     * @param feature the feature that holds it
     * @param names what the values are called
     * @param values the values
     * @param now the one it has; null for none
     */
    public <T> void choice(String words, String element, String feature, List<String> names, List<T> values, Supplier<T> now) {
        row(words, names, List.of(), () -> at(values, now.get()), chosen -> edits -> edits.set(element, feature, values.get(chosen)), words);
    }

    private static <T> int at(List<T> values, T now) {
        return now == null ? -1 : values.indexOf(now);
    }

    private void row(String words, List<String> names, List<String> helps, Supplier<Integer> now, Function<Integer, Change> change, String label) {
        Label left = new Label(parent, SWT.NONE);
        left.setText(words);
        left.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        context.look().dress(left, Role.PAPER, Role.QUIET);
        left.setLayoutData(indented());
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(names.toArray(String[]::new));
        combo.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        combo.setData("culm.choice", words);
        combo.setLayoutData(indented());
        shown.add(() -> show(combo, now.get(), helps));
        combo.addListener(SWT.Selection, e -> Attempt.at(() -> context.change(change.apply(combo.getSelectionIndex()), label + " " + combo.getText()), problem -> {
            show();
            combo.setToolTipText(problem.problem().message());
        }));
    }

    private void show(Combo combo, int now, List<String> helps) {
        combo.setEnabled(!context.locked());
        if (now < 0) {
            combo.deselectAll();
        } else if (combo.getSelectionIndex() != now) {
            combo.select(now);
        }
        if (!helps.isEmpty()) {
            combo.setToolTipText(now < 0 ? null : helps.get(now));
        }
    }

    private static GridData indented() {
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        wide.horizontalIndent = 20;
        return wide;
    }
}
