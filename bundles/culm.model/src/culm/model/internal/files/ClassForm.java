package culm.model.internal.files;

import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;

/**
 * How the objects of one class stand in a file.
 *
 * @param type the class
 * @param attributes what becomes attributes, in order
 * @param cells the feature that takes all further attributes, or null
 * @param elements what becomes elements, in order
 * @param byAttribute attributes by name
 * @param byElement meanings of elements by name
 */
record ClassForm(EClass type, List<FeatureForm> attributes, FeatureForm cells, List<FeatureForm> elements,
        Map<String, FeatureForm> byAttribute, Map<String, FeatureForm.Target> byElement) {
}
