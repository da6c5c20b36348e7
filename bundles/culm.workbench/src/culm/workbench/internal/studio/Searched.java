package culm.workbench.internal.studio;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;

import culm.model.studio.StudioEntry;

/** Shows what has the searched words in its name, id or file, with what is around it. */
final class Searched extends ViewerFilter {
    private final Supplier<String> words;
    private final StudioTree tree;

    /**
     * A filter.
     *
     * @param words what is searched now; blank for all
     * @param tree what it is searched in
     */
    Searched(Supplier<String> words, StudioTree tree) {
        this.words = words;
        this.tree = tree;
    }

    @Override
    public boolean select(Viewer v, Object parent, Object element) {
        String wanted = words.get().strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty() || element instanceof Node.Use) {
            return true;
        }
        if (element instanceof Node.Entry file && has(file.entry(), wanted) || element instanceof Node.Held held && has(held, wanted)) {
            return true;
        }
        if (element instanceof Node.Held held && has(held.file(), wanted)) {
            return true;
        }
        List<Object> children = element instanceof Node.Held ? List.of() : List.of(tree.getChildren(element));
        return children.stream().anyMatch(child -> select(v, element, child));
    }

    private static boolean has(StudioEntry entry, String wanted) {
        return (entry.name() + " " + entry.id() + " " + entry.shown()).toLowerCase(Locale.ROOT).contains(wanted);
    }

    private static boolean has(Node.Held held, String wanted) {
        return (held.part().name() + " " + held.part().id() + " " + held.part().kind()).toLowerCase(Locale.ROOT).contains(wanted);
    }
}
