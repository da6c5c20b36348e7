package culm.geometry.profile;

import java.util.List;

import culm.geometry.GeometryException;

/** What types that are measured at places have in common: one table of at least two rows, no numbers beside it. */
public abstract class MeasuredPlaces implements ProfileType {
    /** Id of the table. */
    public static final String PLACES = "places";
    private static final String NAME = "measured places";
    private static final int FEWEST = 2;
    private final String id;
    private final String help;
    private final TableParameter table;

    /** @param table of {@link #places} */
    protected MeasuredPlaces(String id, String help, TableParameter table) {
        this.id = id;
        this.help = help;
        this.table = table;
    }

    /** The table. @param columns the place first, then what was measured there */
    protected static TableParameter places(List<Parameter> columns, Table standard, String help) {
        return new TableParameter(PLACES, NAME, columns, FEWEST, standard, help);
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String name() {
        return NAME;
    }

    @Override
    public final String help() {
        return help;
    }

    @Override
    public final List<Parameter> parameters() {
        return List.of();
    }

    @Override
    public final List<TableParameter> tables() {
        return List.of(table);
    }

    /** A check that the first row is at 0. @param where completes "The first row has to be", as in "in the middle, 0" */
    protected final List<GeometryException> firstAtZero(Values values, String where) {
        double first = values.table(PLACES).cell(0, 0);
        return first == 0 ? List.of()
                : List.of(new GeometryException(Rows.path(PLACES, 0, table.columns().get(0).id()), "The first row has to be " + where + ", not " + first + "."));
    }
}
