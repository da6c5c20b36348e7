package culm.model.internal.files;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * How one feature stands in a file.
 *
 * @param feature the feature
 * @param name the name of its attribute or element
 * @param kind how it is written
 * @param min the smallest value allowed in it; minus infinity when there is none
 */
record FeatureForm(EStructuralFeature feature, String name, Kind kind, double min) {
    /** Ways to write a feature. */
    enum Kind {
        /** An XML attribute. */
        ATTRIBUTE,
        /** All further attributes: the numbers of a row. */
        CELLS,
        /** An element with text; a feature of many values has many. */
        TEXT,
        /** An element for each object, of the feature's name. */
        OBJECT,
        /** An element for each object, named after its class. */
        OBJECT_BY_CLASS
    }

    /** An element's meaning: the feature it belongs to and, for objects, the class to make. */
    record Target(FeatureForm form, EClass type) {
    }
}
