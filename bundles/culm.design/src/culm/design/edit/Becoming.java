package culm.design.edit;

import java.util.List;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.Document;

/** Makes a document hold what another of its kind holds. */
final class Becoming {
    private Becoming() {
    }

    /** Changes the document. @param other is copied, and stays as it is */
    static void become(Document document, Document other) {
        Document copy = EcoreUtil.copy(other);
        for (EStructuralFeature feature : document.eClass().getEAllStructuralFeatures()) {
            if (feature.isTransient() || feature.isDerived()) {
                continue;
            }
            if (feature.isMany()) {
                List<Object> taken = List.copyOf(list(copy, feature));
                list(document, feature).clear();
                list(document, feature).addAll(taken);
            } else if (copy.eIsSet(feature)) {
                Object value = copy.eGet(feature);
                if (feature instanceof EReference reference && reference.isContainment()) {
                    copy.eUnset(feature);
                }
                document.eSet(feature, value);
            } else {
                document.eUnset(feature);
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static EList<Object> list(EObject owner, EStructuralFeature feature) {
        return (EList<Object>) owner.eGet(feature);
    }
}
