package culm.geometry.profile;

import java.util.ArrayList;
import java.util.List;

import culm.geometry.GeometryException;

/**
 * One kind of profile, a plain class: described parameters, a check across them, a migration of older parameters; subtypes add
 * the method from parameters to geometry. Instances have no state and are shared between threads.
 */
public interface ProfileType {
    /** Stable name in files, lower case with dots, e.g. {@code culm.staple.oval}; never changes. */
    String id();

    /** Version of the parameters, from 1; raised when their meaning changes. */
    default int version() {
        return 1;
    }

    /** The name on screen, lower case, the bench's words. */
    String name();

    /** One or two sentences: what it describes, what is measured. */
    String help();

    /** The numbers, in the order in which they are asked for. */
    List<Parameter> parameters();

    /** The tables, often none. */
    default List<TableParameter> tables() {
        return List.of();
    }

    /** What does not go together although every number is in its range; empty when all is well. Paths are parameter ids. */
    default List<GeometryException> check(Values values) {
        return List.of();
    }

    /**
     * Values of an older version in today's meaning. Numbers that today's version does not know are left out of the result.
     * @param older rows as {@link #tables(int)} describes them
     * @throws GeometryException when they cannot be told
     */
    default Values migrate(int fromVersion, Values older) {
        if (fromVersion > version()) {
            throw new GeometryException("", name() + " is needed in version " + fromVersion + ", here is version " + version() + ".");
        }
        return older;
    }

    /** The tables as they were in an older version; their columns tell how rows of that version are read. */
    default List<TableParameter> tables(int olderVersion) {
        return tables();
    }

    /**
     * Which number of an older version a number of today is the measurement of: its give or take and whether it was measured are taken over.
     * @param id of a number, or of a table's column
     * @return its id then; the same one when it did not exist
     */
    default String origin(int olderVersion, String id) {
        return id;
    }

    /** What is assumed when nothing was measured. */
    default Values standard() {
        Values values = Values.NONE;
        for (Parameter p : parameters()) {
            if (!p.optional()) {
                values = values.with(p.id(), p.standard());
            }
        }
        for (TableParameter t : tables()) {
            values = values.with(t.id(), t.standard());
        }
        return values;
    }

    /** Everything wrong with these values: missing ones, ranges, order of rows, and only then {@link #check(Values)}. */
    default List<GeometryException> problems(Values values) {
        List<GeometryException> found = new ArrayList<>();
        for (Parameter p : parameters()) {
            if (values.has(p.id())) {
                p.refusal(values.number(p.id())).ifPresent(why -> found.add(new GeometryException(p.id(), why)));
            } else if (!p.optional()) {
                found.add(new GeometryException(p.id(), p.label() + " is missing."));
            }
        }
        for (TableParameter t : tables()) {
            found.addAll(Rows.problems(t, values.tables().get(t.id())));
        }
        return found.isEmpty() ? check(values) : found;
    }
}
