package culm.design.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;

import culm.model.Row;

/** In which order elements stand when two versions are put together. */
final class MergeOrder {
    private MergeOrder() {
    }

    /** All ids: in your order, unless only the others changed it; what only the others have stands behind what it follows there. */
    static List<String> of(List<String> before, List<String> yours, List<String> theirs) {
        boolean youMoved = moved(before, yours);
        List<String> first = youMoved || !moved(before, theirs) ? yours : theirs;
        List<String> second = first == yours ? theirs : yours;
        List<String> order = new ArrayList<>(first);
        Set<String> known = new LinkedHashSet<>(first);
        String previous = null;
        for (String id : second) {
            if (known.add(id)) {
                order.add(previous == null ? 0 : order.indexOf(previous) + 1, id);
            }
            previous = id;
        }
        before.stream().filter(known::add).forEach(order::add);
        return order;
    }

    private static boolean moved(List<String> before, List<String> after) {
        List<String> common = before.stream().filter(after::contains).toList();
        return !common.equals(after.stream().filter(before::contains).toList());
    }

    /** Whether rows stand in the order of their first numbers. */
    static boolean ascend(Collection<EObject> rows) {
        double last = Double.NEGATIVE_INFINITY;
        for (EObject row : rows) {
            double here = place(row).orElse(Double.NaN);
            if (!(here >= last)) {
                return false;
            }
            last = here;
        }
        return true;
    }

    /** Puts rows into the order of their first numbers; those without one come last. */
    static void byPlace(EList<EObject> rows) {
        ECollections.sort(rows, Comparator.comparingDouble(row -> place(row).orElse(Double.POSITIVE_INFINITY)));
    }

    private static OptionalDouble place(EObject row) {
        return ((Row) row).getCells() == null ? OptionalDouble.empty()
                : ((Row) row).getCells().asMap().values().stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
