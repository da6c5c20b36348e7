package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.explore.Usual;
import culm.explore.Varied;
import culm.figures.Role;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.numbers.LengthUnit;

/** How every input scatters; what usually varies comes first. */
public final class SpreadList extends ScrolledComposite {
    private final Workshop workshop;
    private final Composite grid;
    private final List<SpreadRow> rows = new ArrayList<>();
    private Map<String, Object> shown = Map.of();
    private Optional<Varied> fitted = Optional.empty();
    private Runnable changed = () -> { };

    SpreadList(Composite parent, Workshop workshop) {
        super(parent, SWT.V_SCROLL);
        this.workshop = workshop;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        setExpandHorizontal(true);
        setExpandVertical(true);
        grid = new Composite(this, SWT.NONE);
        workshop.look().dress(grid, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 1;
        layout.horizontalSpacing = 4;
        grid.setLayout(layout);
        setContent(grid);
    }

    /** Offers a blank's inputs; what was chosen for those whose give or take is as before stays. */
    void offer(Blank blank) {
        Map<String, Varied> usual = Usual.of(blank).stream().collect(Collectors.toMap(Varied::path, Function.identity()));
        fitted = Optional.ofNullable(usual.get(Inputs.DELTA));
        List<Offer.Number> numbers = Offer.of(blank).stream().filter(Offer.Number.class::isInstance).map(Offer.Number.class::cast).toList();
        Map<String, Object> now = numbers.stream().collect(Collectors.toMap(Offer.Number::id, n -> List.of(Optional.ofNullable(usual.get(n.id())).map(Varied::spread).map(Object::toString).orElse(""),
                n.form(LengthUnit.MM))));
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        rows.clear();
        for (Control child : grid.getChildren()) {
            child.dispose();
        }
        for (boolean varies : new boolean[] {true, false}) {
            numbers.stream().filter(n -> usual.containsKey(n.id()) == varies)
                    .forEach(n -> rows.add(new SpreadRow(grid, workshop, n, Optional.ofNullable(usual.get(n.id())), () -> changed.run())));
        }
        grid.layout();
        setMinSize(0, grid.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        getVerticalBar().setIncrement(24);
    }

    /** What to run when something else is chosen or typed. */
    void onChange(Runnable todo) {
        changed = todo;
    }

    /** Everything back to what is usual. */
    public void reset() {
        rows.forEach(SpreadRow::reset);
        changed.run();
    }

    /** {@return all that is chosen and typed} */
    String told() {
        return rows.stream().map(SpreadRow::told).collect(Collectors.joining("\n"));
    }

    /** The row of an input. */
    public SpreadRow row(String id) {
        return rows.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    /** {@return what varies} @throws IllegalArgumentException when something typed is no spread, or nothing varies */
    List<Varied> varied() {
        List<Varied> all = new ArrayList<>();
        rows.forEach(r -> r.varied().ifPresent(all::add));
        fitted.ifPresent(all::add);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("Nothing varies.");
        }
        return all;
    }
}
