package culm.blank.export;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;

/** The exporters that a program offers, by id and in order; an object that is handed in, never a global. */
public final class Exporters {
    private final Map<String, Exporter> exporters = new LinkedHashMap<>();

    /** @throws IllegalArgumentException when two have the same id */
    public Exporters(Iterable<? extends Exporter> all) {
        for (Exporter exporter : all) {
            if (exporters.putIfAbsent(exporter.id(), exporter) != null) {
                throw new IllegalArgumentException("two exporters are called " + exporter.id());
            }
        }
    }

    /** What {@link ServiceLoader} finds on the class path. */
    public static Exporters load() {
        return new Exporters(ServiceLoader.load(Exporter.class, Exporter.class.getClassLoader()));
    }

    /** The exporter with this id, if it is known here. */
    public Optional<Exporter> find(String id) {
        return Optional.ofNullable(exporters.get(id));
    }

    /** All exporters. */
    public Collection<Exporter> all() {
        return Collections.unmodifiableCollection(exporters.values());
    }
}
