package culm.model.internal.files;

import culm.model.ModelPackage;
import culm.model.internal.files.FeatureForm.Kind;
import culm.model.internal.files.FeatureForm.Target;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.ExtendedMetaData;

/** The text form of the whole model, worked out once from its description. Immutable. */
public final class TextForm {
    private static final String BOUNDS = "culm:bounds";

    private final Map<EClass, ClassForm> classes = new LinkedHashMap<>();
    private final Map<String, EClass> roots = new LinkedHashMap<>();

    /** Works out the text form. */
    public TextForm() {
        List<EClass> all = new ArrayList<>();
        for (EClassifier classifier : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass type && !type.isAbstract()) {
                all.add(type);
            }
        }
        for (EClass type : all) {
            if (ModelPackage.Literals.ELEMENT.isSuperTypeOf(type)) {
                classes.put(type, describe(type, all));
            }
            if (ModelPackage.Literals.DOCUMENT.isSuperTypeOf(type)) {
                roots.put(nameOf(type, type.getName()), type);
            }
        }
    }

    /** {@return the classes of documents by the name of their root element} */
    Map<String, EClass> roots() {
        return roots;
    }

    /**
     * The name of a class's elements.
     *
     * @param type a class that stands under its own name
     * @return the name
     */
    public String nameOf(EClass type) {
        return nameOf(type, type.getName());
    }

    ClassForm of(EClass type) {
        return classes.get(type);
    }

    private static ClassForm describe(EClass type, List<EClass> all) {
        List<FeatureForm> attributes = new ArrayList<>();
        List<FeatureForm> elements = new ArrayList<>();
        FeatureForm cells = null;
        Map<String, FeatureForm> byAttribute = new LinkedHashMap<>();
        Map<String, Target> byElement = new LinkedHashMap<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            FeatureForm form = describe(feature);
            if (form == null) {
                continue;
            }
            switch (form.kind()) {
                case ATTRIBUTE -> {
                    attributes.add(((EAttribute) feature).isID() ? 0 : attributes.size(), form);
                    byAttribute.put(form.name(), form);
                }
                case CELLS -> cells = form;
                case TEXT -> {
                    elements.add(form);
                    byElement.put(form.name(), new Target(form, null));
                }
                case OBJECT -> {
                    elements.add(form);
                    byElement.put(form.name(), new Target(form, ((EReference) feature).getEReferenceType()));
                }
                case OBJECT_BY_CLASS -> {
                    elements.add(form);
                    for (EClass each : all) {
                        if (((EReference) feature).getEReferenceType().isSuperTypeOf(each)) {
                            byElement.put(nameOf(each, each.getName()), new Target(form, each));
                        }
                    }
                }
            }
        }
        return new ClassForm(type, List.copyOf(attributes), cells, List.copyOf(elements), byAttribute, byElement);
    }

    private static FeatureForm describe(EStructuralFeature feature) {
        String kind = text(feature, "kind");
        if (feature.isTransient() || feature.isDerived() || "strays".equals(kind) || "strayAttributes".equals(kind)) {
            return null;
        }
        String min = EcoreUtil.getAnnotation(feature, BOUNDS, "min");
        double least = min == null ? Double.NEGATIVE_INFINITY : Double.parseDouble(min);
        return new FeatureForm(feature, nameOf(feature, feature.getName()), kindOf(feature, kind), least);
    }

    private static Kind kindOf(EStructuralFeature feature, String kind) {
        if (feature instanceof EAttribute) {
            if ("attributeWildcard".equals(kind)) {
                return Kind.CELLS;
            }
            return "attribute".equals(kind) ? Kind.ATTRIBUTE : Kind.TEXT;
        }
        return ((EReference) feature).getEReferenceType().isAbstract() ? Kind.OBJECT_BY_CLASS : Kind.OBJECT;
    }

    private static String nameOf(EModelElement element, String otherwise) {
        String name = text(element, "name");
        return name == null ? otherwise : name;
    }

    private static String text(EModelElement element, String key) {
        return EcoreUtil.getAnnotation(element, ExtendedMetaData.ANNOTATION_URI, key);
    }
}
