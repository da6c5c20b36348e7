package culm.design.compare;

import java.util.Objects;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.Stray;
import culm.model.xml.XmlNode;

/** Whether two things that this program does not know are the same, in the same place. */
final class StrayMatch {
    private StrayMatch() {
    }

    /** A stray is where it was when it stands beside the element of the same name and id, whatever that element holds by now. */
    static boolean same(Stray a, Stray b) {
        return same(a.getNode(), b.getNode()) && a.isTrailing() == b.isTrailing() && Objects.equals(a.getAnchorName(), b.getAnchorName())
                && place(a.getAnchor()).equals(place(b.getAnchor()));
    }

    private static String place(EObject anchor) {
        return anchor == null || anchor.eContainingFeature() == null ? "" : anchor.eContainingFeature().getName() + " " + EcoreUtil.getID(anchor);
    }

    private static boolean same(XmlNode a, XmlNode b) {
        if (a == null || b == null) {
            return a == b;
        }
        return a.kind() == b.kind() && Objects.equals(a.name(), b.name()) && a.text().equals(b.text()) && a.attributes().equals(b.attributes())
                && a.children().size() == b.children().size()
                && IntStream.range(0, a.children().size()).allMatch(i -> same(a.children().get(i), b.children().get(i)));
    }
}
