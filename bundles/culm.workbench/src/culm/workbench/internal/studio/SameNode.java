package culm.workbench.internal.studio;

import org.eclipse.jface.viewers.IElementComparer;

/** Knows what stands in the tree again after the studio was read anew: what is chosen and open stays so. */
final class SameNode implements IElementComparer {
    @Override
    public boolean equals(Object a, Object b) {
        return key(a).equals(key(b));
    }

    @Override
    public int hashCode(Object element) {
        return key(element).hashCode();
    }

    private static Object key(Object element) {
        return element instanceof Node node ? node.key() : element;
    }
}
