package culm.workbench.internal.studio;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.viewers.ITreeContentProvider;

import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;

/** The studio as a tree: designs, parts files with their parts and who uses each, batches, logs, limits. */
final class StudioTree implements ITreeContentProvider {
    private StudioIndex index;

    void index(StudioIndex now) {
        index = now;
    }

    @Override
    public Object[] getElements(Object input) {
        List<Node> groups = new ArrayList<>();
        for (FileKind kind : FileKind.values()) {
            if (index != null && (kind == FileKind.DESIGN || !index.of(kind).isEmpty())) {
                groups.add(new Node.Group(kind, words(kind)));
            }
        }
        return groups.toArray();
    }

    private static String words(FileKind kind) {
        return switch (kind) {
            case DESIGN -> "Designs";
            case PARTS -> "Parts";
            case BATCH -> "Batches";
            case LOG -> "Reed logs";
            case LIMITS -> "My limits";
        };
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof Node.Group group) {
            return index.of(group.kind()).stream().map(Node.Entry::new).toArray();
        }
        if (parent instanceof Node.Entry file && file.entry().kind() == FileKind.PARTS) {
            return file.entry().parts().stream().map(p -> new Node.Held(file.entry(), p)).toArray();
        }
        if (parent instanceof Node.Held held) {
            return index.usersOf(held.file().file(), held.part().id()).stream().map(u -> new Node.Use(held, u.design())).toArray();
        }
        return new Object[0];
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof Node.Entry entry) {
            return new Node.Group(entry.entry().kind(), words(entry.entry().kind()));
        }
        if (element instanceof Node.Held held) {
            return new Node.Entry(held.file());
        }
        return element instanceof Node.Use use ? use.part() : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return getChildren(element).length > 0;
    }

    /** {@return the node of a file, as it would stand in the tree} */
    static Node node(StudioEntry entry) {
        return new Node.Entry(entry);
    }
}
