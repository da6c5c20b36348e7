package culm.geometry.guard;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.TableParameter;

/** Whether a profile type describes itself well enough to be offered in a form and written into files. */
public final class Description {
    private static final String ID = "[a-z][A-Za-z0-9]*(\\.[A-Za-z0-9]+)*";
    private static final String TABLE_ID = "[a-z][A-Za-z0-9]*";

    private Description() {
    }

    /**
     * The first thing that is wrong with a type's description, one sentence; empty when all is well. Calls every method of
     * {@link ProfileType} once; what those throw is thrown on.
     *
     * @param reserved ids that the part itself has already, such as {@code length}; a type's own numbers must not be called so
     */
    public static Optional<String> problem(ProfileType type, Set<String> reserved) {
        if (type.id() == null || !type.id().matches(ID)) {
            return Optional.of("Its id \"" + type.id() + "\" is not made of letters, digits and dots, a small letter first.");
        }
        if (type.version() < 1) {
            return Optional.of("Its version is " + type.version() + "; versions count from 1.");
        }
        if (blank(type.name()) || blank(type.help())) {
            return Optional.of("It has no " + (blank(type.name()) ? "name." : "help text."));
        }
        if (type.parameters() == null || type.tables() == null) {
            return Optional.of("It does not say what it needs.");
        }
        Set<String> ids = new HashSet<>(reserved);
        for (Parameter p : type.parameters()) {
            if (!ids.add(p.id())) {
                return taken(p.id(), reserved);
            }
        }
        for (TableParameter t : type.tables()) {
            if (!t.id().matches(TABLE_ID) || !ids.add(t.id())) {
                return taken(t.id(), reserved);
            }
        }
        List<GeometryException> refused = type.problems(type.standard());
        return refused.isEmpty() ? Optional.empty() : Optional.of("It refuses its own defaults: " + refused.get(0).getMessage());
    }

    private static Optional<String> taken(String id, Set<String> reserved) {
        return Optional.of("The id \"" + id + "\" cannot be used for one of its numbers or tables: "
                + (reserved.contains(id) ? "every such part has one of that name." : "it is taken twice, or has other signs than letters and digits."));
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
