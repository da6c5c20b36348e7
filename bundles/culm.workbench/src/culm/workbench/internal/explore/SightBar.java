package culm.workbench.internal.explore;

import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.plots.MapPlot;
import culm.explore.Axis;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;

/** What belongs to a way of looking at variants: the filter of the table, the two numbers of the map. */
final class SightBar extends Composite {
    private final Look look;
    private final RowFilter filter;
    private final Composite ofMap;
    private final Combo across;
    private final Combo up;
    private final Combo lines;
    private List<String> ids = List.of();

    SightBar(Composite parent, Look look, Units units, Runnable filtered, Runnable lined) {
        super(parent, SWT.NONE);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        setLayout(new StackLayout());
        filter = new RowFilter(this, look, units, filtered);
        ofMap = new Composite(this, SWT.NONE);
        look.dress(ofMap, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(6, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        ofMap.setLayout(layout);
        across = combo("across", "map across");
        up = combo("up", "map up");
        lines = combo("lines of", "map lines");
        for (MapPlot.Lines each : MapPlot.Lines.values()) {
            lines.add(each.words());
        }
        lines.select(0);
        lines.addListener(SWT.Selection, e -> lined.run());
    }

    private Combo combo(String words, String name) {
        Label label = new Label(ofMap, SWT.NONE);
        label.setText(words);
        label.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(label, Role.PAPER, Role.QUIET);
        Combo combo = new Combo(ofMap, SWT.READ_ONLY);
        combo.setFont(look.font(Size.BODY, SWT.NORMAL));
        combo.setData("culm.explore", name);
        return combo;
    }

    void show(VariantsPage.Sight sight) {
        ((StackLayout) getLayout()).topControl = sight == VariantsPage.Sight.MAP ? ofMap : filter;
        layout();
    }

    /** Offers the numbers of a list for the map. */
    void offer(AxisList list) {
        List<Offer.Number> numbers = list.rows().stream().map(AxisRow::offer).filter(Offer.Number.class::isInstance).map(Offer.Number.class::cast).toList();
        List<String> now = numbers.stream().map(Offer.Number::id).toList();
        if (!now.equals(ids)) {
            ids = now;
            for (Combo combo : List.of(across, up)) {
                combo.setItems(numbers.stream().map(Offer.Number::words).toArray(String[]::new));
                combo.select(Math.min(combo == across ? 0 : 1, numbers.size() - 1));
            }
            ofMap.layout();
        }
    }

    void offer(VariantsFound found) {
        filter.offer(found);
    }

    RowOrder filter(RowOrder order) {
        return filter.of(order);
    }

    MapPlot.Lines lines() {
        return MapPlot.Lines.values()[Math.max(0, lines.getSelectionIndex())];
    }

    /** The two axes of the map. @throws IllegalArgumentException when there are no two */
    Axis.Numbers[] two(List<Axis> axes) {
        int x = across.getSelectionIndex();
        int y = up.getSelectionIndex();
        if (x < 0 || y < 0 || x == y) {
            throw new IllegalArgumentException("A map needs two different numbers.");
        }
        return new Axis.Numbers[] {find(axes, ids.get(x)), find(axes, ids.get(y))};
    }

    private static Axis.Numbers find(List<Axis> axes, String id) {
        return (Axis.Numbers) axes.stream().filter(a -> a.id().equals(id)).findFirst().orElseThrow();
    }

    /** What is said of a crossing. @param verdict the one it would have as a design */
    String said(MapMade m, int[] at, String verdict, Lengths lengths) {
        double turns = m.map().turns()[at[1]][at[0]];
        return m.words(at, lengths) + ": " + (Double.isNaN(turns) ? "never closes" : String.format(Locale.ROOT, "%.1f turns left", turns)) + ", " + verdict;
    }
}
