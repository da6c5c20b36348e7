package culm.design.compare;

import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import culm.blank.Limits;
import culm.geometry.profile.Parameter;
import culm.model.Batch;
import culm.model.Cane;
import culm.model.Column;
import culm.model.Document;
import culm.model.LogEntry;
import culm.model.MeasuredStaple;
import culm.model.NamedValue;
import culm.model.ParameterValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.TableData;
import culm.model.Tie;
import culm.model.Variant;
import culm.model.Worked;

/** Where in a document something is, in words of the trade. */
final class Names {
    private static final Map<String, String> FEATURES = Map.ofEntries(Map.entry("endProfile", "gouge at the end of the cane"), Map.entry("widthsAlong", "widths measured along"),
            Map.entry("tube", "tube"), Map.entry("measuredOn", "measured on"), Map.entry("corkTop", "cork top"), Map.entry("worked", "the blank that worked"),
            Map.entry("strays", "what this program does not know"), Map.entry("strayAttributes", "what this program does not know"));
    private final Telling telling;

    Names(Telling telling) {
        this.telling = telling;
    }

    /** A feature of an element: {@code tie length}, {@code staple, top, wide}. */
    String of(EObject owner, EStructuralFeature feature) {
        String described = described(owner, feature.getName());
        String word = described != null ? described : FEATURES.getOrDefault(feature.getName(), apart(feature.getName()));
        boolean ofItself = described != null && (described.startsWith(word(owner)) || owner instanceof Tie || owner instanceof Cane);
        return within(owner, word, ofItself);
    }

    /** A thing with a name or id of its own: a number of a profile, a part, a row, an entry. */
    String of(EObject keyed) {
        EObject owner = keyed.eContainer();
        if (keyed instanceof ParameterValue number && owner instanceof ProfileData profile) {
            return within(owner, telling.number(profile, number.getName()), false);
        }
        if (keyed instanceof NamedValue limit) {
            Parameter described = Limits.all().get(limit.getName());
            return "my limits, " + (described == null ? apart(String.valueOf(limit.getName())) : described.label());
        }
        if (keyed instanceof Column column) {
            return within(owner, apart(String.valueOf(column.getName())) + ", how well it is known", false);
        }
        if (keyed instanceof Row row) {
            return within(owner, "place" + at(row), false);
        }
        if (keyed instanceof TableData table) {
            return within(owner, apart(String.valueOf(table.getName())), false);
        }
        if (keyed instanceof MeasuredStaple staple) {
            return "staple " + (staple.getLabel() == null ? staple.getId() : staple.getLabel());
        }
        if (keyed instanceof LogEntry entry) {
            return "blank " + (entry.getNumber() == null ? entry.getId() : entry.getNumber());
        }
        if (keyed instanceof Variant variant) {
            return "variant " + variant.getName();
        }
        return keyed instanceof Part part ? word(part) + " " + (part.getName() == null ? part.getId() : part.getName()) : apart(keyed.eClass().getName());
    }

    /** One number of a row: {@code shape, width at 22 mm from the fold}. */
    String of(Row row, String column) {
        boolean isPlace = row.getCells() != null && row.getCells().asMap().keySet().stream().findFirst().filter(column::equals).isPresent();
        return within(row.eContainer(), telling.column(row, column) + (isPlace ? " of the place" : "") + at(row), false);
    }

    private String at(Row row) {
        if (row.getCells() == null || row.getCells().asMap().isEmpty()) {
            return "";
        }
        Map.Entry<String, Double> place = row.getCells().asMap().entrySet().iterator().next();
        String word = telling.column(row, place.getKey());
        return " at " + Measures.of(telling.measures(row, place.getKey()), place.getValue()) + (word.startsWith("from") ? " " + word : "");
    }

    private String within(EObject owner, String word, boolean told) {
        String around = owner == null || told ? "" : word(owner);
        String inside = around.isEmpty() ? word : around + ", " + word;
        for (EObject each = owner; each != null; each = each.eContainer()) {
            if (each instanceof Worked && each != owner) {
                return "the blank that worked, " + inside;
            }
            if (each instanceof Variant variant && each != owner) {
                return "the variant " + variant.getName() + ", " + inside;
            }
        }
        return inside;
    }

    /** The nearest thing around that has a word: staple, gouge, the blank that worked, blank 14. */
    private String word(EObject owner) {
        if (owner instanceof Part part) {
            String kind = apart(part.eClass().getName().replace("Part", ""));
            return part.eContainingFeature() != null && part.eContainingFeature().isMany() ? kind + " " + (part.getName() == null ? part.getId() : part.getName()) : kind;
        }
        if (owner instanceof MeasuredStaple || owner instanceof LogEntry) {
            return of(owner);
        }
        if (owner == null || owner instanceof Document || owner instanceof Batch) {
            return "";
        }
        String feature = owner.eContainingFeature() == null ? "" : owner.eContainingFeature().getName();
        if (owner instanceof ProfileData && feature.equals("profile") || owner instanceof TableData && !feature.equals("inside")) {
            return word(owner.eContainer());
        }
        return switch (feature) {
            case "inside" -> "shape, inside";
            case "endProfile" -> "gouge at the end of the cane";
            case "worked" -> "the blank that worked";
            default -> apart(feature);
        };
    }

    private static String described(EObject owner, String feature) {
        Parameter found = Measures.input(owner, feature);
        return found == null ? null : found.label();
    }

    /** Names in files are written together; on screen they are words. */
    static String apart(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
