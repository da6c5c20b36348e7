package culm.geometry.guard;

import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;

/** What all guarded profile types share. What a type says of itself is asked once, at the beginning. */
abstract class GuardedType<T extends ProfileType> implements ProfileType, Guarded {
    private final T type;
    private final Guard guard;
    private final String id;
    private final int version;
    private final String name;
    private final String help;
    private final List<Parameter> parameters;
    private final List<TableParameter> tables;

    GuardedType(T type, Guard guard) {
        this.type = type;
        this.guard = guard;
        this.id = type.id();
        this.version = type.version();
        this.name = type.name();
        this.help = type.help();
        this.parameters = List.copyOf(type.parameters());
        this.tables = List.copyOf(type.tables());
    }

    final T type() {
        return type;
    }

    @Override
    public final Guard guard() {
        return guard;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final int version() {
        return version;
    }

    @Override
    public final String name() {
        return name;
    }

    @Override
    public final String help() {
        return help;
    }

    @Override
    public final List<Parameter> parameters() {
        return parameters;
    }

    @Override
    public final List<TableParameter> tables() {
        return tables;
    }

    @Override
    public final List<GeometryException> check(Values values) {
        try {
            return List.copyOf(guard.ask(() -> type.check(values)));
        } catch (GeometryException e) {
            return List.of(e);
        } catch (NullPointerException e) {
            return List.of(guard.failed("gave nothing back where a refusal was expected"));
        }
    }

    @Override
    public final Values migrate(int fromVersion, Values older) {
        return guard.ask(() -> type.migrate(fromVersion, older));
    }

    @Override
    public final List<TableParameter> tables(int olderVersion) {
        return guard.ask(() -> List.copyOf(type.tables(olderVersion)));
    }

    @Override
    public final String origin(int olderVersion, String parameter) {
        return guard.ask(() -> type.origin(olderVersion, parameter));
    }

    @Override
    public final Values standard() {
        return guard.ask(type::standard);
    }

    /** Breaks as promised: finite and ascending. */
    static double[] breaks(Guard guard, java.util.function.Supplier<double[]> asked) {
        double[] found = guard.call(asked).clone();
        for (int i = 0; i < found.length; i++) {
            if (!Double.isFinite(found[i]) || i > 0 && found[i] < found[i - 1]) {
                throw guard.failed("names the places where it is not smooth out of order, or one that is no number");
            }
        }
        return found;
    }
}
