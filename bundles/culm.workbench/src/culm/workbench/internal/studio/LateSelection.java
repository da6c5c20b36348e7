package culm.workbench.internal.studio;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

/** What is chosen in something that is made later; the platform asks for it before, and only once. Nothing is chosen until then. */
final class LateSelection implements ISelectionProvider {
    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private Optional<ISelectionProvider> source = Optional.empty();

    /** From now on it is what is chosen there. */
    void follow(ISelectionProvider made) {
        source = Optional.of(made);
        made.addSelectionChangedListener(e -> listeners.forEach(l -> l.selectionChanged(new SelectionChangedEvent(this, e.getSelection()))));
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }

    @Override
    public ISelection getSelection() {
        return source.map(ISelectionProvider::getSelection).orElse(StructuredSelection.EMPTY);
    }

    @Override
    public void setSelection(ISelection selection) {
        source.ifPresent(s -> s.setSelection(selection));
    }
}
