package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.LinkText;

/** The things that vary, one below the other. */
public final class AxisList extends Composite {
    private static final int MOST = 6;
    private final Workshop workshop;
    private final StudioParts parts;
    private final Runnable resized;
    private final List<AxisRow> rows = new ArrayList<>();
    private final LinkText add;
    private List<Offer> offers = List.of();
    private Runnable changed = () -> {
    };

    AxisList(Composite parent, Workshop workshop, StudioParts parts, Runnable resized) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.parts = parts;
        this.resized = resized;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        setLayout(layout);
        add = new LinkText(this, workshop.look(), "and another", Size.BODY);
        add.onClick(() -> add(next()));
    }

    /** Tells of every change. */
    void onChange(Runnable todo) {
        changed = todo;
    }

    void changed() {
        changed.run();
    }

    /** Offers what a blank has. */
    void offer(Blank blank) {
        offers = Offer.of(blank);
        rows.forEach(r -> r.offer(offers, ""));
    }

    /** Adds a thing that varies. @param id a path or a kind of part */
    public AxisRow add(String id) {
        AxisRow row = new AxisRow(this, workshop, parts);
        rows.add(row);
        row.offer(offers, id);
        add.moveBelow(null);
        add.setVisible(rows.size() < MOST);
        resized.run();
        changed();
        return row;
    }

    /** The first thing that does not vary yet. */
    private String next() {
        Set<String> used = new HashSet<>(rows.stream().map(r -> r.offer().id()).toList());
        return offers.stream().map(Offer::id).filter(id -> !used.contains(id)).findFirst().orElse("");
    }

    /** It does not vary. */
    public void drop(AxisRow row) {
        if (rows.size() > 1) {
            rows.remove(row);
            row.dispose();
            add.setVisible(true);
            resized.run();
            changed();
        }
    }

    /** {@return the rows} */
    public List<AxisRow> rows() {
        return List.copyOf(rows);
    }

    /** {@return what varies} @throws IllegalArgumentException when that cannot be told; @throws FileProblemException when a part cannot be read */
    List<Axis> axes() throws FileProblemException {
        List<Axis> axes = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (AxisRow row : rows) {
            Axis axis = row.axis();
            if (!seen.add(axis.id())) {
                throw new IllegalArgumentException(axis.label() + " stands here twice.");
            }
            axes.add(axis);
        }
        return axes;
    }

    /** The parts that each axis of parts chooses from, by kind. */
    Map<String, List<Link>> links() {
        Map<String, List<Link>> links = new TreeMap<>();
        rows.stream().filter(r -> r.offer() instanceof Offer.Parts).forEach(r -> links.put(r.offer().id(), r.chosen().stream().map(StudioParts.Named::link).toList()));
        return links;
    }
}
