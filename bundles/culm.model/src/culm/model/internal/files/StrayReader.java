package culm.model.internal.files;

import culm.model.Element;
import culm.model.ModelFactory;
import culm.model.Stray;
import culm.model.StrayAttribute;
import culm.model.xml.XmlNode;
import java.util.ArrayList;
import java.util.List;

/** Collects what one element holds and the model does not know, and ties it to the known neighbour that follows. */
final class StrayReader {
    private final Element owner;
    private final List<Stray> waiting = new ArrayList<>();
    private XmlNode lastNode;
    private Element lastObject;

    StrayReader(Element owner) {
        this.owner = owner;
    }

    static void attribute(Element owner, String name, String value) {
        StrayAttribute attribute = ModelFactory.eINSTANCE.createStrayAttribute();
        attribute.setName(name);
        attribute.setValue(value);
        owner.getStrayAttributes().add(attribute);
    }

    void add(XmlNode node) {
        Stray stray = ModelFactory.eINSTANCE.createStray();
        stray.setNode(node);
        boolean beside = node.kind() == XmlNode.Kind.COMMENT && lastNode != null && waiting.isEmpty()
                && node.line() == lastNode.endLine();
        if (beside) {
            stray.setTrailing(true);
            anchor(stray, lastNode, lastObject);
        } else {
            waiting.add(stray);
        }
        owner.getStrays().add(stray);
    }

    /** A known child: what waited stands before it. */
    void passed(XmlNode node, Element object) {
        waiting.forEach(stray -> anchor(stray, node, object));
        waiting.clear();
        lastNode = node;
        lastObject = object;
    }

    private static void anchor(Stray stray, XmlNode node, Element object) {
        if (object != null) {
            stray.setAnchor(object);
        } else {
            stray.setAnchorName(node.name());
        }
    }
}
