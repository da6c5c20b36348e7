package culm.workbench.internal.studio;

import java.util.Optional;

import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

import culm.figures.Role;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.undo.UndoTarget;
import culm.workbench.internal.widgets.SoonAfter;

/** The view of the studio: its tree is made once the window stands, or when it is asked for. */
public final class StudioView extends ViewPart {
    /** The view's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.studio";
    private final LateSelection selection = new LateSelection();
    private Workshop workshop;
    private SoonAfter<StudioPane> place;

    @Override
    public void createPartControl(Composite parent) {
        workshop = Workshop.of(getSite());
        place = new SoonAfter<>(parent, p -> new StudioPane(p, getViewSite(), workshop), () -> {
            selection.follow(viewer());
            if (place.isFocusControl()) {
                setFocus();
            }
        });
        workshop.look().dress(place, Role.PAPER, Role.INK);
        getSite().setSelectionProvider(selection);
    }

    /** Puts the focus into the search. */
    public void search() {
        place.get().beginSearch();
    }

    /** Chooses a file in the tree. */
    public void reveal(StudioEntry entry) {
        place.get().reveal(entry);
    }

    /** {@return the tree} */
    public TreeViewer viewer() {
        return place.get().viewer();
    }

    /** {@return the sort of studio node that is chosen, if any} */
    public Optional<Node> chosen() {
        return place.ifMade().flatMap(StudioPane::chosen);
    }

    @Override
    public void setFocus() {
        place.ifMade().ifPresentOrElse(StudioPane::begin, place::setFocus);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == UndoTarget.class ? adapter.cast(workshop.studio().steps()) : super.getAdapter(adapter);
    }
}
