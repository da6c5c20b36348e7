package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;

import culm.explore.Axis;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.LinkText;

/** One thing that varies: what it is, and its values or the parts that are chosen. */
public final class AxisRow extends Composite {
    private static final int WHAT = 210;
    private static final int VALUES = 240;
    private static final int LEAST = 120;
    private final Workshop workshop;
    private final StudioParts parts;
    private final Combo what;
    private final Text values;
    private final LinkText choose;
    private final TreeSet<Integer> chosen = new TreeSet<>();
    private List<Offer> offers = List.of();
    private String begun = "";
    private final TypedValues typed;
    private List<StudioParts.Named> named = List.of();

    AxisRow(AxisList list, Workshop workshop, StudioParts parts) {
        super(list, SWT.NONE);
        this.workshop = workshop;
        this.parts = parts;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        what = new Combo(this, SWT.READ_ONLY);
        what.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        what.setLayoutData(wide(WHAT));
        what.setData("culm.explore", "what");
        what.addListener(SWT.Selection, e -> {
            begin();
            list.changed();
        });
        values = new Text(this, SWT.BORDER);
        values.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        values.setLayoutData(shrinking());
        values.setToolTipText("Values: 70 to 75 by 0.5, or 70 to 75 in 11, or 70; 71.5; 73");
        values.setData("culm.explore", "values");
        typed = new TypedValues(values, workshop.units(), list::changed);
        workshop.units().onChange(this, this::rewrite);
        choose = new LinkText(this, workshop.look(), "", Size.BODY);
        choose.setLayoutData(wide(VALUES));
        choose.onClick(this::offerParts);
        LinkText drop = new LinkText(this, workshop.look(), "without", Size.BODY);
        drop.setToolTipText("This does not vary");
        drop.onClick(() -> list.drop(this));
        new Label(this, SWT.NONE).setLayoutData(rest());
        setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    }

    /** Gives way where there is little room, so that all of the row is seen. */
    private static GridData shrinking() {
        GridData data = wide(VALUES);
        data.horizontalAlignment = SWT.FILL;
        data.grabExcessHorizontalSpace = true;
        data.minimumWidth = LEAST;
        return data;
    }

    private static GridData rest() {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 0;
        return data;
    }

    private static GridData wide(int width) {
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = width;
        return data;
    }

    /** Offers what the design has now, and keeps what is chosen where it is still there. */
    void offer(List<Offer> now, String first) {
        String kept = begun.isEmpty() ? first : begun;
        offers = now;
        List<String> words = now.stream().map(Offer::words).toList();
        if (!List.of(what.getItems()).equals(words)) {
            what.setItems(words.toArray(String[]::new));
        }
        boolean fresh = begun.isEmpty();
        what.select(Math.max(0, now.stream().map(Offer::id).toList().indexOf(kept)));
        if (fresh || !offer().id().equals(begun)) {
            begin();
        }
    }

    /** {@return what varies; null before anything was offered} */
    Offer offer() {
        int at = what.getSelectionIndex();
        return at < 0 || at >= offers.size() ? null : offers.get(at);
    }

    private void begin() {
        begun = offer().id();
        boolean number = offer() instanceof Offer.Number;
        ((GridData) values.getLayoutData()).exclude = !number;
        ((GridData) choose.getLayoutData()).exclude = number;
        values.setVisible(number);
        choose.setVisible(!number);
        if (offer() instanceof Offer.Number n) {
            values.setText(n.values(workshop.units().now()));
        } else {
            named = parts.of(offer().id());
            chosen.clear();
            for (int i = 0; i < named.size(); i++) {
                chosen.add(i);
            }
            sayChosen();
        }
        layout();
    }

    private void sayChosen() {
        choose.say(named.isEmpty() ? "the studio has none" : chosen.size() + " of " + named.size() + " chosen…");
        choose.setToolTipText(String.join(", ", chosen.stream().map(i -> named.get(i).name()).toList()));
    }

    private void offerParts() {
        Menu menu = new Menu(choose);
        for (int i = 0; i < named.size(); i++) {
            int part = i;
            MenuItem item = new MenuItem(menu, SWT.CHECK);
            item.setText(named.get(i).name());
            item.setSelection(chosen.contains(i));
            item.addListener(SWT.Selection, e -> choose(part, item.getSelection()));
        }
        menu.addListener(SWT.Hide, e -> getDisplay().asyncExec(menu::dispose));
        menu.setLocation(choose.toDisplay(0, choose.getSize().y));
        menu.setVisible(true);
    }

    /** Chooses a part, or leaves it out. */
    public void choose(int part, boolean with) {
        if (with) {
            chosen.add(part);
        } else {
            chosen.remove(part);
        }
        sayChosen();
        ((AxisList) getParent()).changed();
    }

    /** {@return the parts that are chosen, in the order of the axis} */
    List<StudioParts.Named> chosen() {
        List<StudioParts.Named> all = new ArrayList<>();
        chosen.forEach(i -> all.add(named.get(i)));
        return all;
    }

    /** Shows values. */
    public void values(String text) {
        values.setText(text);
    }

    /** Another unit was chosen: the same lengths are written in it, and read as they were typed. */
    private void rewrite() {
        if (offer() instanceof Offer.Number n) {
            typed.rewrite(n::form);
        }
    }

    /** {@return the axis} @throws IllegalArgumentException when what is typed says no values; @throws FileProblemException when a part cannot be read */
    Axis axis() throws FileProblemException {
        if (offer() instanceof Offer.Parts p) {
            if (chosen.isEmpty()) {
                throw new IllegalArgumentException("No " + p.id() + " is chosen.");
            }
            return parts.axis(p, chosen());
        }
        Offer.Number number = (Offer.Number) offer();
        try {
            Axis.Numbers axis = ValuesText.read(number.id(), number.words(), number.form(typed.unit()), typed.text());
            number.input().ifPresent(i -> {
                for (double value : axis.values()) {
                    number.form(workshop.units().now()).refuse(i.parameter(), value).ifPresent(sentence -> {
                        throw new IllegalArgumentException(sentence);
                    });
                }
            });
            return axis;
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(number.words() + ": " + e.getMessage(), e);
        }
    }
}
