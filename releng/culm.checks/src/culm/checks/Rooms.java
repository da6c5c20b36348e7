package culm.checks;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The rooms of the program and the arrows between them: which room may use which other. */
final class Rooms {

	/** For each room the rooms it may use. */
	static final Map<String, Set<String>> MAY_USE = Collections.unmodifiableMap(new TreeMap<>(Map.of(
			"geometry", Set.of(),
			"blank", Set.of("geometry"),
			"explore", Set.of("blank", "geometry"),
			"model", Set.of(),
			"design", Set.of("model", "blank", "geometry"),
			"extensions", Set.of("geometry", "blank"),
			"figures", Set.of("blank", "geometry"),
			"bench", Set.of("design", "model", "figures", "explore", "blank", "geometry"),
			"cli", Set.of("bench", "extensions", "design", "model", "figures", "explore", "blank", "geometry"),
			"workbench", Set.of("bench", "extensions", "design", "model", "figures", "explore", "blank", "geometry"))));

	/** The rooms of plain Java, usable as a library. */
	static final Set<String> PLAIN = Set.of("geometry", "blank", "explore");

	private Rooms() {
	}
}
