package culm.geometry.profile;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * The known types of one kind, in the order in which they were added; an object that is handed in, never a global. Not to be changed
 * after it was handed out.
 */
public final class Registry<T extends ProfileType> {
    private final Map<String, T> types = new LinkedHashMap<>();

    /** A registry of everything that {@link ServiceLoader} finds for a kind; for plain Java without Eclipse. */
    public static <T extends ProfileType> Registry<T> load(Class<T> kind) {
        Registry<T> registry = new Registry<>();
        ServiceLoader.load(kind, kind.getClassLoader()).forEach(registry::add);
        return registry;
    }

    /** @throws IllegalArgumentException when the id is taken */
    public Registry<T> add(T type) {
        if (types.putIfAbsent(type.id(), type) != null) {
            throw new IllegalArgumentException("two types are called " + type.id());
        }
        return this;
    }

    /** The type with this id, if it is known here. */
    public Optional<T> find(String id) {
        return Optional.ofNullable(types.get(id));
    }

    /** All types. */
    public Collection<T> all() {
        return Collections.unmodifiableCollection(types.values());
    }
}
