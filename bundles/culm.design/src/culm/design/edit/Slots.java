package culm.design.edit;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import culm.model.Element;
import culm.model.GougePart;
import culm.model.ModelFactory;
import culm.model.ModelPackage;
import culm.model.ParameterValue;
import culm.model.ProfileData;
import culm.model.Quantity;
import culm.model.Row;
import culm.model.ShapePart;
import culm.model.TableData;

/** Finds where inside an element an input's number, profile or table stands. */
final class Slots {
    private Slots() {
    }

    /** The number, if it is there. */
    static Optional<Quantity> quantity(Element element, InputPath path) {
        EStructuralFeature feature = typed(element, path);
        if (feature != null) {
            return Optional.ofNullable((Quantity) element.eGet(feature));
        }
        ProfileData profile = profile(element, path.element());
        return profile == null ? Optional.empty()
                : profile.getParameters().stream().filter(p -> path.name().equals(p.getName())).map(Quantity.class::cast).findFirst();
    }

    /** The number, made when it is missing. */
    static Quantity ownQuantity(Element element, InputPath path) {
        return quantity(element, path).orElseGet(() -> {
            EStructuralFeature feature = typed(element, path);
            if (feature != null) {
                Quantity made = ModelFactory.eINSTANCE.createQuantity();
                element.eSet(feature, made);
                return made;
            }
            ParameterValue made = ModelFactory.eINSTANCE.createParameterValue();
            made.setName(path.name());
            required(profile(element, path.element()), path.element()).getParameters().add(made);
            return made;
        });
    }

    /** Takes the number away. */
    static void remove(Element element, InputPath path) {
        EStructuralFeature feature = typed(element, path);
        if (feature != null) {
            element.eUnset(feature);
        } else {
            quantity(element, path).ifPresent(q -> ((ProfileData) q.eContainer()).getParameters().remove(q));
        }
    }

    /** The profile a word means; null when there is none. */
    static ProfileData profile(Element element, String word) {
        EStructuralFeature feature = profileFeature(element, word);
        return feature == null ? null : (ProfileData) element.eGet(feature);
    }

    static EStructuralFeature profileFeature(Element element, String word) {
        if (element instanceof GougePart && word.equals("gougeEnd")) {
            return ModelPackage.Literals.GOUGE_PART__END_PROFILE;
        }
        return element.eClass().getEStructuralFeature("profile");
    }

    /** The table at a path. @throws IllegalArgumentException when there is none */
    static TableData table(Element element, InputPath path) {
        if (element instanceof ShapePart shape && path.element().equals("inside")) {
            return required(shape.getInside(), "inside");
        }
        return required(profile(element, path.element()), path.element()).getTables().stream().filter(t -> path.name().equals(t.getName()))
                .findFirst().orElseThrow(() -> new IllegalArgumentException("There are no " + path.name() + " in the " + path.element() + "."));
    }

    /** The table at a path, made when it is missing. */
    static TableData ownTable(Element element, InputPath path) {
        if (element instanceof ShapePart shape && path.element().equals("inside")) {
            if (shape.getInside() == null) {
                shape.setInside(newTable(path.name()));
            }
            return shape.getInside();
        }
        ProfileData profile = required(profile(element, path.element()), path.element());
        return profile.getTables().stream().filter(t -> path.name().equals(t.getName())).findFirst().orElseGet(() -> {
            TableData made = newTable(path.name());
            profile.getTables().add(made);
            return made;
        });
    }

    static Row row(TableData table, int index) {
        if (index < 0 || index >= table.getRows().size()) {
            throw new IllegalArgumentException("There is no row " + (index + 1) + "; there are " + table.getRows().size() + ".");
        }
        return table.getRows().get(index);
    }

    private static TableData newTable(String name) {
        TableData table = ModelFactory.eINSTANCE.createTableData();
        table.setName(name);
        return table;
    }

    private static EStructuralFeature typed(EObject element, InputPath path) {
        if (path.element().equals("gougeEnd") || path.element().equals("inside")) {
            return null;
        }
        EStructuralFeature feature = element.eClass().getEStructuralFeature(path.name());
        return feature != null && feature.getEType() == ModelPackage.Literals.QUANTITY ? feature : null;
    }

    private static <T> T required(T found, String word) {
        if (found == null) {
            throw new IllegalArgumentException("The " + word + " has no profile yet.");
        }
        return found;
    }
}
