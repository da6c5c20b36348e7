package culm.model.internal.files;

import culm.model.Element;
import culm.model.Stray;
import culm.model.xml.XmlPrinter;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes what one element holds and the model does not know, each piece where its neighbour now stands. */
final class StrayWriter {
    /** Where a stray stands that is outside the root element. */
    static final String BEFORE_ROOT = "<";
    static final String AFTER_ROOT = ">";

    private final XmlPrinter printer;
    private final Map<Element, List<Stray>> byObject = new IdentityHashMap<>();
    private final Map<String, List<Stray>> byName = new LinkedHashMap<>();
    private final Set<Stray> left = new LinkedHashSet<>();

    StrayWriter(Element owner, XmlPrinter printer) {
        this.printer = printer;
        for (Stray stray : owner.getStrays()) {
            String name = stray.getAnchorName();
            if (BEFORE_ROOT.equals(name) || AFTER_ROOT.equals(name)) {
                continue;
            }
            left.add(stray);
            if (stray.getAnchor() != null) {
                byObject.computeIfAbsent(stray.getAnchor(), key -> new ArrayList<>(2)).add(stray);
            } else if (name != null) {
                byName.computeIfAbsent(name, key -> new ArrayList<>(2)).add(stray);
            }
        }
    }

    static void outside(Element root, String where, XmlPrinter printer) {
        for (Stray stray : root.getStrays()) {
            if (where.equals(stray.getAnchorName())) {
                printer.node(stray.getNode());
            }
        }
    }

    boolean isEmpty() {
        return left.isEmpty();
    }

    void around(Element object, Runnable writing) {
        around(byObject.getOrDefault(object, List.of()), writing);
    }

    void around(String name, Runnable writing) {
        around(byName.getOrDefault(name, List.of()), writing);
    }

    private void around(List<Stray> strays, Runnable writing) {
        for (Stray stray : strays) {
            if (!stray.isTrailing() && left.remove(stray)) {
                printer.node(stray.getNode());
            }
        }
        writing.run();
        for (Stray stray : strays) {
            if (stray.isTrailing() && left.remove(stray)) {
                printer.beside(stray.getNode());
            }
        }
    }

    /** Those whose neighbour is gone, or that stood last. */
    void rest() {
        left.forEach(stray -> printer.node(stray.getNode()));
    }
}
