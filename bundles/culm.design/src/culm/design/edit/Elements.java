package culm.design.edit;

import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.Element;
import culm.model.ModelFactory;
import culm.model.Part;

/** Finds, by the first word of an input's path, the element that holds it; makes it where it is missing. */
final class Elements {
    /** Words that stand for a piece of another element. */
    private static final Map<String, String> WITHIN = Map.of("gougeEnd", "gouge", "inside", "shape");

    private final Element root;

    /** @param root a design, or one part alone */
    Elements(Element root) {
        this.root = root;
    }

    Element root() {
        return root;
    }

    /** The element for a word such as {@code staple} or {@code tie}; empty means the root itself. Null when there is none yet. */
    Element find(String word) {
        EStructuralFeature feature = feature(word);
        return feature == null ? root : (Element) root.eGet(feature);
    }

    /**
     * The element, made when it is missing. A linked part gives way to a copy of what it stands for.
     *
     * @param resolved the part that a linked one stands for; null when it is not linked
     */
    Element own(String word, Part resolved) {
        EStructuralFeature feature = feature(word);
        if (feature == null) {
            return root;
        }
        Element element = (Element) root.eGet(feature);
        if (element == null) {
            element = (Element) ModelFactory.eINSTANCE.create((EClass) feature.getEType());
            root.eSet(feature, element);
        } else if (element instanceof Part part && part.getLink() != null && resolved != null) {
            element = EcoreUtil.copy(resolved);
            root.eSet(feature, element);
        }
        return element;
    }

    /** The root's feature for a word; null when the word means the root. @throws IllegalArgumentException when there is no such element */
    EStructuralFeature feature(String word) {
        String name = WITHIN.getOrDefault(word, word);
        if (name.isEmpty() || root instanceof Part && name.equals(nameOf(root))) {
            return null;
        }
        EStructuralFeature feature = root.eClass().getEStructuralFeature(name);
        if (feature == null || feature.isMany() || !(feature.getEType() instanceof EClass)) {
            throw new IllegalArgumentException("There is nothing called " + word + " here.");
        }
        return feature;
    }

    /** The word for a part: staple, gouge, shape or thread. */
    static String nameOf(EObject part) {
        String type = part.eClass().getName();
        return Character.toLowerCase(type.charAt(0)) + type.substring(1).replace("Part", "");
    }
}
