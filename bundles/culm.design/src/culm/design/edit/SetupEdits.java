package culm.design.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.ModelPackage;
import culm.model.Setup;

/** Parts and lengths put from one setup into another. */
final class SetupEdits {
    private SetupEdits() {
    }

    /** Moves every feature of a setup that differs; the first setup is used up. */
    static void put(Setup from, Setup to) {
        for (EStructuralFeature feature : ModelPackage.Literals.SETUP.getEStructuralFeatures()) {
            if (same(from, to, feature)) {
                continue;
            }
            if (from.eIsSet(feature)) {
                to.eSet(feature, from.eGet(feature));
            } else {
                to.eUnset(feature);
            }
        }
    }

    private static boolean same(Setup a, Setup b, EStructuralFeature feature) {
        if (a.eIsSet(feature) != b.eIsSet(feature)) {
            return false;
        }
        return a.eGet(feature) instanceof EObject object ? EcoreUtil.equals(object, (EObject) b.eGet(feature)) : java.util.Objects.equals(a.eGet(feature), b.eGet(feature));
    }
}
