package culm.checks;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The rooms of the program and the arrows between them: which room may use which other. */
final class Rooms {

    /** For each room the rooms it may use. */
    static final Map<String, Set<String>> MAY_USE = table();

    /** The rooms of plain Java, usable as a library. */
    static final Set<String> PLAIN = Set.of("geometry", "blank", "explore");

    private Rooms() {
    }

    private static Map<String, Set<String>> table() {
        Map<String, Set<String>> table = new TreeMap<>();
        table.put("geometry", Set.of());
        table.put("blank", Set.of("geometry"));
        table.put("explore", Set.of("blank", "geometry"));
        table.put("model", Set.of());
        table.put("design", Set.of("model", "blank", "geometry"));
        table.put("history", Set.of("design", "model", "geometry"));
        table.put("extensions", Set.of("geometry", "blank"));
        table.put("figures", Set.of("blank", "geometry"));
        table.put("bench", Set.of("design", "model", "figures", "explore", "blank", "geometry"));
        table.put("cli", Set.of("bench", "history", "extensions", "design", "model", "figures", "explore", "blank", "geometry"));
        table.put("workbench", Set.of("bench", "history", "extensions", "design", "model", "figures", "explore", "blank", "geometry"));
        table.put("testkit", Set.of("geometry", "blank"));
        return Collections.unmodifiableMap(table);
    }
}
