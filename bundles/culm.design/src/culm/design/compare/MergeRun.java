package culm.design.compare;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.Column;
import culm.model.Document;
import culm.model.Element;
import culm.model.ModelPackage;
import culm.model.NamedValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Quantity;
import culm.model.Row;
import culm.model.Stray;
import culm.model.StrayAttribute;
import culm.model.text.Cells;

/** One walk through three versions of a document: notes what differs and makes the version that has everything. */
final class MergeRun {
    private final Telling telling;
    private final Names names;
    private final Map<String, Choice> choices;
    private final List<Difference> differences = new ArrayList<>();
    /** What was made of each element of the three versions; strays stand beside such elements. */
    private final Map<EObject, EObject> made = new IdentityHashMap<>();

    MergeRun(Telling telling, Map<String, Choice> choices) {
        this.telling = telling;
        this.names = new Names(telling);
        this.choices = choices;
    }

    List<Difference> differences() {
        return differences;
    }

    /** @param before may be null */
    Document document(Document before, Document yours, Document theirs) {
        Document result = (Document) object("", before, yours, theirs);
        result.eAllContents().forEachRemaining(each -> {
            if (each instanceof Stray stray && stray.getAnchor() != null && made.containsKey(stray.getAnchor())) {
                stray.setAnchor((Element) made.get(stray.getAnchor()));
            }
        });
        return result;
    }

    /** Three versions of one element; none but {@code b} is null. */
    private EObject object(String path, EObject b, EObject y, EObject t) {
        EObject result = EcoreUtil.create(y.eClass());
        for (EObject version : new EObject[] {b, t, y}) {
            if (version != null) {
                made.put(version, result);
            }
        }
        for (EStructuralFeature feature : y.eClass().getEAllStructuralFeatures()) {
            if (feature.isTransient() || feature.isDerived() || feature instanceof EReference reference && !reference.isContainment()) {
                continue;
            }
            if (feature == ModelPackage.Literals.ROW__CELLS) {
                cells(path, (Row) b, (Row) y, (Row) t, (Row) result);
            } else if (feature.isMany() && feature instanceof EReference reference && keyed(reference, b, y, t)) {
                list(under(path, feature), feature, b, y, t, result);
            } else if (feature.isMany() || !(feature instanceof EReference)) {
                attribute(path, feature, b, y, t, result);
            } else {
                EObject one = element(under(path, feature), names.of(y, feature), given(b, feature), given(y, feature), given(t, feature));
                set(result, feature, one);
            }
        }
        return result;
    }

    /** Three versions of something that may be missing in any; the one to keep, null for none. */
    private EObject element(String path, String label, EObject b, EObject y, EObject t) {
        boolean allThere = y != null && t != null && y.eClass() == t.eClass() && (b == null || b.eClass() == y.eClass());
        if (allThere && !isOneThing(b, y, t)) {
            return object(path, b, y, t);
        }
        return copy(choose(path, label, null, b, y, t, (one, other) -> EcoreUtil.equals((EObject) one, (EObject) other)));
    }

    private void attribute(String path, EStructuralFeature feature, EObject b, EObject y, EObject t, EObject result) {
        Object chosen = choose(under(path, feature), names.of(y, feature), Measures.of(y, feature.getName()), value(b, feature), value(y, feature), value(t, feature),
                feature instanceof EReference ? MergeRun::equalLists : Objects::equals);
        set(result, feature, chosen instanceof List<?> list && feature instanceof EReference ? objects(list).stream().map(this::copy).toList() : chosen);
    }

    private void cells(String path, Row b, Row y, Row t, Row result) {
        Set<String> columns = new LinkedHashSet<>(cells(y).keySet());
        columns.addAll(cells(t).keySet());
        columns.addAll(cells(b).keySet());
        Map<String, Double> kept = new LinkedHashMap<>();
        for (String column : columns) {
            Object chosen = choose(path + "." + column, names.of(b == null ? y : b, column), telling.measures(b == null ? y : b, column), cells(b).get(column), cells(y).get(column), cells(t).get(column), Objects::equals);
            if (chosen != null) {
                kept.put(column, (Double) chosen);
            }
        }
        result.setCells(Cells.of(kept));
    }

    private void list(String path, EStructuralFeature feature, EObject b, EObject y, EObject t, EObject result) {
        Map<String, EObject> before = byKey(b, feature);
        Map<String, EObject> yours = byKey(y, feature);
        Map<String, EObject> theirs = byKey(t, feature);
        Map<String, EObject> kept = new LinkedHashMap<>();
        for (String key : MergeOrder.of(List.copyOf(before.keySet()), List.copyOf(yours.keySet()), List.copyOf(theirs.keySet()))) {
            EObject shown = before.getOrDefault(key, yours.getOrDefault(key, theirs.get(key)));
            String at = feature == ModelPackage.Literals.PROFILE_DATA__PARAMETERS || feature == ModelPackage.Literals.PROFILE_DATA__TABLES
                    || feature == ModelPackage.Literals.LIMITS__VALUES ? join(path, key) : path + "[" + key + "]";
            EObject one = element(at, names.of(shown), before.get(key), yours.get(key), theirs.get(key));
            if (one != null) {
                kept.put(key, one);
            }
        }
        EList<EObject> into = objects(result.eGet(feature));
        into.addAll(kept.values());
        if (feature == ModelPackage.Literals.TABLE_DATA__ROWS && MergeOrder.ascend(yours.values()) && MergeOrder.ascend(theirs.values())) {
            MergeOrder.byPlace(into);
        }
    }

    /** Three values that are taken whole; the one to keep. Equal ones count as unchanged. @param measures what bare numbers among them are */
    private Object choose(String path, String label, culm.geometry.profile.Quantity measures, Object b, Object y, Object t, BiPredicate<Object, Object> equal) {
        boolean yoursChanged = !same(b, y, equal);
        boolean theirsChanged = !same(b, t, equal);
        boolean alike = same(y, t, equal);
        if (!yoursChanged && !theirsChanged) {
            return y;
        }
        Side side = alike ? Side.BOTH : !theirsChanged ? Side.YOURS : !yoursChanged ? Side.THEIRS : Side.CONFLICT;
        differences.add(Difference.of(path, side, List.of(label, telling.of(b, measures), telling.of(y, measures), telling.of(t, measures))));
        Choice choice = choices.getOrDefault(path, side == Side.THEIRS ? Choice.THEIRS : Choice.YOURS);
        return choice == Choice.YOURS ? y : choice == Choice.THEIRS ? t : b;
    }

    private static boolean same(Object one, Object other, BiPredicate<Object, Object> equal) {
        return one == null || other == null ? one == other : equal.test(one, other);
    }

    /** What is taken whole: a number with its give or take; a part that is linked elsewhere; a profile of another type. */
    private static boolean isOneThing(EObject b, EObject y, EObject t) {
        if (y instanceof Quantity || y instanceof NamedValue || y instanceof Column || y instanceof Stray || y instanceof StrayAttribute) {
            return true;
        }
        if (y instanceof Part part) {
            return !alike(link(b), part.getLink(), link(t), b == null) || part.getLink() != null;
        }
        return y instanceof ProfileData data && !(Objects.equals(data.getType(), ((ProfileData) t).getType())
                && (b == null || Objects.equals(data.getType(), ((ProfileData) b).getType())) && data.getVersion() == ((ProfileData) t).getVersion());
    }

    private static boolean alike(String before, String yours, String theirs, boolean noBefore) {
        return Objects.equals(yours, theirs) && (noBefore || Objects.equals(before, yours));
    }

    private static String link(EObject part) {
        return part == null ? null : ((Part) part).getLink();
    }

    /** Whether a list's elements can be told apart by ids in every version. */
    private static boolean keyed(EReference feature, EObject... versions) {
        if (feature.getEReferenceType().getEIDAttribute() == null && feature.getEReferenceType() != ModelPackage.Literals.PART) {
            return false;
        }
        for (EObject version : versions) {
            if (version != null && byKey(version, feature).size() != ((List<?>) version.eGet(feature)).size()) {
                return false;
            }
        }
        return true;
    }

    private static Map<String, EObject> byKey(EObject owner, EStructuralFeature feature) {
        Map<String, EObject> byKey = new LinkedHashMap<>();
        if (owner != null) {
            for (EObject each : objects(owner.eGet(feature))) {
                String id = EcoreUtil.getID(each);
                if (id != null) {
                    byKey.put(id, each);
                }
            }
        }
        return byKey;
    }

    private static Map<String, Double> cells(Row row) {
        return row == null || row.getCells() == null ? Map.of() : row.getCells().asMap();
    }

    private static EObject given(EObject owner, EStructuralFeature feature) {
        return owner == null ? null : (EObject) owner.eGet(feature);
    }

    private static Object value(EObject owner, EStructuralFeature feature) {
        return owner == null || !owner.eIsSet(feature) ? null : owner.eGet(feature);
    }

    private static boolean equalLists(Object one, Object other) {
        List<EObject> all = objects(one);
        List<EObject> others = objects(other);
        return all.size() == others.size() && IntStream.range(0, all.size()).allMatch(i -> alike(all.get(i), others.get(i)));
    }

    private static boolean alike(EObject one, EObject other) {
        return one instanceof Stray a && other instanceof Stray b ? StrayMatch.same(a, b) : EcoreUtil.equals(one, other);
    }

    private EObject copy(Object chosen) {
        if (chosen == null) {
            return null;
        }
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        EObject copy = copier.copy((EObject) chosen);
        copier.copyReferences();
        made.putAll(copier);
        return copy;
    }

    private static void set(EObject result, EStructuralFeature feature, Object value) {
        if (value != null) {
            result.eSet(feature, value);
        }
    }

    @SuppressWarnings("unchecked")
    private static EList<EObject> objects(Object list) {
        return (EList<EObject>) list;
    }

    private static String under(String path, EStructuralFeature feature) {
        return switch (feature.getName()) {
            case "profile", "parameters", "tables", "rows" -> path;
            case "endProfile" -> path + "End";
            default -> join(path, feature.getName());
        };
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
