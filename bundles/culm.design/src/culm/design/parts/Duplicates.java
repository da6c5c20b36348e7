package culm.design.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import culm.model.Design;
import culm.model.Document;
import culm.model.ModelPackage;
import culm.model.Part;
import culm.model.PartsFile;
import culm.model.Quantity;
import culm.model.Row;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;

/** Finds parts that are the same in every number, whatever they are called: in the parts files, and copies of their own in designs. */
public final class Duplicates {
    private Duplicates() {
    }

    /**
     * One of several parts that are the same.
     *
     * @param file where it stands
     * @param kind staple, gouge, shape or thread
     * @param id   its id; may be empty in a design
     * @param name what it is called; may be empty
     * @param copy true when it stands in a design, as its own copy
     */
    public record Found(Path file, String kind, String id, String name, boolean copy) {
    }

    /**
     * What was found.
     *
     * @param groups   parts that are the same, at least two of each, at least one of them in a parts file
     * @param problems files that could not be read
     */
    public record Report(List<List<Found>> groups, List<FileProblem> problems) {
    }

    /** Reads every parts file and design of a studio. */
    public static Report find(Studio studio, StudioIndex index) {
        Map<String, List<Found>> byContent = new LinkedHashMap<>();
        List<FileProblem> problems = new ArrayList<>();
        for (StudioEntry entry : index.entries()) {
            if (entry.kind() == FileKind.PARTS || entry.kind() == FileKind.DESIGN) {
                try {
                    Document document = studio.files().load(entry.file(), entry.shown(), entry.kind().type()).document();
                    parts(document).forEach(part -> byContent.computeIfAbsent(content(part), key -> new ArrayList<>())
                            .add(new Found(entry.file(), kind(part), text(part.getId()), text(part.getName()), document instanceof Design)));
                } catch (FileProblemException e) {
                    problems.add(e.problem());
                }
            }
        }
        List<List<Found>> groups = byContent.values().stream().filter(g -> g.size() > 1 && g.stream().anyMatch(f -> !f.copy())).map(List::copyOf).toList();
        return new Report(groups, List.copyOf(problems));
    }

    private static List<Part> parts(Document document) {
        List<Part> all = new ArrayList<>();
        if (document instanceof PartsFile file) {
            all.addAll(file.getParts());
        } else if (document instanceof Design design) {
            for (Part part : new Part[] {design.getStaple(), design.getGouge(), design.getShape(), design.getThread()}) {
                if (part != null && part.getLink() == null) {
                    all.add(part);
                }
            }
        }
        return all;
    }

    /** Everything that has to do with the geometry, as one text: values, not how well they are known, who measured and when. */
    private static String content(Part part) {
        StringBuilder text = new StringBuilder(part.eClass().getName());
        write(text, part);
        return text.toString();
    }

    private static void write(StringBuilder text, EObject object) {
        if (object instanceof Quantity quantity && quantity.eClass() == ModelPackage.Literals.QUANTITY) {
            text.append(quantity.isSetValue() ? quantity.getValue() : "none");
            return;
        }
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            if (!counts(object, feature)) {
                continue;
            }
            text.append(' ').append(feature.getName()).append('=');
            Object value = object.eGet(feature);
            if (value instanceof List<?> list) {
                list.forEach(each -> {
                    text.append('[');
                    write(text, (EObject) each);
                    text.append(']');
                });
            } else if (value instanceof EObject child) {
                text.append('(');
                write(text, child);
                text.append(')');
            } else {
                text.append(value);
            }
        }
    }

    private static boolean counts(EObject owner, EStructuralFeature feature) {
        String name = feature.getName();
        boolean aside = switch (name) {
            case "strays", "strayAttributes", "columns", "tolerance", "how" -> true;
            case "id" -> owner instanceof Part || owner instanceof Row;
            case "name", "source", "measuredOn", "notes", "link" -> owner instanceof Part;
            default -> false;
        };
        return !aside && !feature.isTransient() && owner.eIsSet(feature);
    }

    private static String kind(Part part) {
        return part.eClass().getName().replace("Part", "").toLowerCase(java.util.Locale.ROOT);
    }

    private static String text(String given) {
        return Objects.requireNonNullElse(given, "");
    }
}
