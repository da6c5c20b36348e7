package culm.model.internal.files;

import culm.model.Element;
import culm.model.ModelFactory;
import culm.model.internal.files.FeatureForm.Kind;
import culm.model.internal.files.FeatureForm.Target;
import culm.model.internal.files.ValueText.BadValueException;
import culm.model.problem.FileProblem;
import culm.model.text.Cells;
import culm.model.text.Ids;
import culm.model.text.Located;
import culm.model.xml.XmlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Makes objects from a tree of XML. Goes on after a problem, so that all of them can be told at once. */
final class TreeReader {
    private static final int MOST_PROBLEMS = 50;

    private final TextForm form;
    private final String file;
    private final List<FileProblem> problems = new ArrayList<>();

    TreeReader(TextForm form, String file) {
        this.form = form;
        this.file = file;
    }

    List<FileProblem> problems() {
        return problems;
    }

    Element read(XmlNode node, EClass type, double min) {
        ClassForm classForm = form.of(type);
        Element object = (Element) ModelFactory.eINSTANCE.create(type);
        Located.place(object, node.line());
        attributes(node, classForm, object, min);
        var strays = new StrayReader(object);
        for (XmlNode child : node.children()) {
            child(child, classForm, object, strays);
        }
        if (node.children().isEmpty() && !node.text().isBlank()) {
            problem(FileProblem.Kind.MISPLACED, node, node.text(),
                    label(node) + " holds the text " + quoted(node.text()) + ", where none belongs");
        }
        for (FeatureForm list : classForm.elements()) {
            if (list.feature().isMany() && list.kind() != Kind.TEXT) {
                checkIds(object, list);
            }
        }
        return object;
    }

    private void attributes(XmlNode node, ClassForm classForm, Element object, double min) {
        Map<String, Double> cells = new LinkedHashMap<>();
        node.attributes().forEach((name, text) -> {
            FeatureForm attribute = classForm.byAttribute().get(name);
            if (attribute != null) {
                double least = Math.max(attribute.min(), name.equals("value") ? min : Double.NEGATIVE_INFINITY);
                Object value = value(node, name, attribute.feature(), text, least);
                if (value != null) {
                    object.eSet(attribute.feature(), value);
                }
            } else if (classForm.cells() != null) {
                try {
                    cells.put(name, ValueText.number(text, Double.NEGATIVE_INFINITY));
                } catch (BadValueException e) {
                    bad(node, name, text, e);
                }
            } else {
                StrayReader.attribute(object, name, text);
            }
        });
        if (classForm.cells() != null) {
            object.eSet(classForm.cells().feature(), cells.isEmpty() ? Cells.NONE : Cells.of(cells));
        }
    }

    private void child(XmlNode child, ClassForm classForm, Element object, StrayReader strays) {
        if (child.kind() == XmlNode.Kind.TEXT) {
            problem(FileProblem.Kind.MISPLACED, child, child.text(),
                    "the text " + quoted(child.text()) + " stands where none belongs");
            return;
        }
        Target target = child.kind() == XmlNode.Kind.ELEMENT ? classForm.byElement().get(child.name()) : null;
        if (target == null) {
            strays.add(child);
            return;
        }
        EStructuralFeature feature = target.form().feature();
        if (!feature.isMany() && object.eIsSet(feature)) {
            problem(FileProblem.Kind.TWICE, child, child.name(), child.name() + " is given a second time");
            return;
        }
        if (target.form().kind() == Kind.TEXT) {
            text(child, target.form(), object, strays);
            return;
        }
        Element part = read(child, target.type(), target.form().min());
        store(object, feature, part);
        strays.passed(child, part);
        child.release();
    }

    private void text(XmlNode child, FeatureForm textForm, Element object, StrayReader strays) {
        StringBuilder text = new StringBuilder(child.text());
        for (XmlNode piece : child.children()) {
            if (piece.kind() == XmlNode.Kind.TEXT) {
                text.append(piece.text());
            } else if (piece.kind() == XmlNode.Kind.ELEMENT) {
                problem(FileProblem.Kind.MISPLACED, piece, piece.name(),
                        "the element " + piece.name() + " stands inside " + child.name() + ", which holds text only");
            } else {
                strays.add(piece);
            }
        }
        if (!child.attributes().isEmpty()) {
            String name = child.attributes().keySet().iterator().next();
            problem(FileProblem.Kind.MISPLACED, child, name,
                    child.name() + " has the attribute " + quoted(name) + ", but takes text only, as <" + child.name()
                            + ">\u2026</" + child.name() + ">");
            return;
        }
        Object value = value(child, "", textForm.feature(), text.toString(), textForm.min());
        if (value != null) {
            store(object, textForm.feature(), value);
        }
        strays.passed(child, null);
    }

    @SuppressWarnings("unchecked")
    private static void store(EObject object, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            ((EList<Object>) object.eGet(feature)).add(value);
        } else {
            object.eSet(feature, value);
        }
    }

    private Object value(XmlNode node, String name, EStructuralFeature feature, String text, double min) {
        try {
            Object value = ValueText.parse((EDataType) feature.getEType(), text, min);
            if (((EAttribute) feature).isID() && feature.getName().equals("id") && !Ids.isId(text)) {
                throw new BadValueException(FileProblem.Kind.BAD_VALUE,
                        "is no id: letters, digits, point, hyphen and underscore only");
            }
            return value;
        } catch (BadValueException e) {
            bad(node, name, text, e);
            return null;
        }
    }

    private void checkIds(Element parent, FeatureForm list) {
        List<?> objects = (List<?>) parent.eGet(list.feature());
        Map<String, EObject> seen = new LinkedHashMap<>();
        List<EObject> without = new ArrayList<>();
        for (Object each : objects) {
            EObject object = (EObject) each;
            EAttribute id = object.eClass().getEIDAttribute();
            if (id == null) {
                return;
            }
            String text = (String) object.eGet(id);
            if (text == null) {
                without.add(object);
            } else if (seen.putIfAbsent(text, object) != null) {
                problem(FileProblem.Kind.DUPLICATE_ID, Located.lineOf(object), text, "the " + id.getName() + " "
                        + quoted(text) + " stands here and in line " + Located.lineOf(seen.get(text)) + " as well");
            }
        }
        Ids.Counter counter = new Ids.Counter(seen.keySet());
        for (EObject object : without) {
            EAttribute id = object.eClass().getEIDAttribute();
            if (id.getName().equals("id")) {
                object.eSet(id, counter.next());
            } else {
                problem(FileProblem.Kind.MISSING_VALUE, Located.lineOf(object), "",
                        "a " + list.name() + " needs the attribute " + id.getName());
            }
        }
    }

    private void bad(XmlNode node, String name, String text, BadValueException e) {
        problem(e.kind(), node, text,
                label(node) + (name.isEmpty() ? "" : " " + name) + ": " + quoted(text) + " " + e.getMessage());
    }

    private void problem(FileProblem.Kind kind, XmlNode node, String value, String sentence) {
        problem(kind, node.line(), value, sentence);
    }

    private void problem(FileProblem.Kind kind, int line, String value, String sentence) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new FileProblem(kind, file, line, value, sentence));
        }
    }

    private static String label(XmlNode node) {
        String name = node.attribute("name") == null ? node.attribute("id") : node.attribute("name");
        return name == null ? node.name() : node.name() + " " + FileProblem.shorten(name);
    }

    private static String quoted(String text) {
        return "\"" + FileProblem.shorten(text) + "\"";
    }
}
