package culm.workbench.internal.studio;

import java.util.Optional;

import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.TreeItem;

/** The place of what is chosen in a tree: when it goes, what comes into its place is chosen, so that the keys go on from there. */
record Beside(TreeViewer viewer, Optional<TreeItem> parent, int place) {
    static Beside of(TreeViewer viewer) {
        TreeItem[] chosen = viewer.getTree().getSelection();
        Optional<TreeItem> parent = chosen.length == 1 ? Optional.ofNullable(chosen[0].getParentItem()) : Optional.empty();
        return new Beside(viewer, parent, parent.map(p -> p.indexOf(chosen[0])).orElse(0));
    }

    void chooseIfGone() {
        if (viewer.getTree().getSelectionCount() == 0 && parent.isPresent() && !parent.get().isDisposed()) {
            TreeItem above = parent.get();
            TreeItem now = above.getItemCount() == 0 ? above : above.getItem(Math.min(place, above.getItemCount() - 1));
            viewer.setSelection(new StructuredSelection(now.getData()), true);
        }
    }
}
