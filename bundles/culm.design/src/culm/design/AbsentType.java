package culm.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;

import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;
import culm.model.ParameterValue;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.TableData;
import culm.model.text.Numbers;

/**
 * Stands in for a profile type that is not here: its plug-in is missing, or older than the file. The numbers and rows of the file can be shown
 * under their ids; whatever needs the geometry is refused with the reason.
 */
public final class AbsentType implements StapleType, GougeType, ShapeType {
    private static final double ANY = 1e12;
    private static final String ID = "[a-z][A-Za-z0-9]*";
    private final String id;
    private final int version;
    private final String reason;
    private final List<Parameter> parameters = new ArrayList<>();
    private final List<TableParameter> tables = new ArrayList<>();
    private Values values = Values.NONE;

    AbsentType(ProfileData data, String reason) {
        this.id = data.getType() == null ? "" : data.getType();
        this.version = Math.max(1, data.getVersion());
        this.reason = reason;
        for (ParameterValue p : data.getParameters()) {
            if (p.isSetValue() && p.getName() != null && p.getName().matches(ID) && !values.has(p.getName())) {
                parameters.add(shown(p.getName()));
                values = values.with(p.getName(), p.getValue());
            }
        }
        data.getTables().forEach(this::add);
    }

    private void add(TableData table) {
        Set<String> columns = new LinkedHashSet<>();
        table.getRows().forEach(row -> columns.addAll(row.getCells() == null ? Set.of() : row.getCells().asMap().keySet()));
        columns.removeIf(c -> !c.matches(ID));
        if (table.getName() == null || values.tables().containsKey(table.getName()) || columns.size() < 2) {
            return;
        }
        List<double[]> rows = new ArrayList<>();
        for (Row row : table.getRows()) {
            rows.add(columns.stream().mapToDouble(c -> row.getCells() == null ? Double.NaN : row.getCells().get(c).orElse(Double.NaN)).toArray());
        }
        Table filled = Table.of(rows);
        tables.add(new TableParameter(table.getName(), table.getName(), columns.stream().map(AbsentType::shown).toList(), 0, filled, reason));
        values = values.with(table.getName(), filled);
    }

    private static Parameter shown(String name) {
        return new Parameter(name, name, Quantity.COUNT, -ANY, ANY, Double.NaN, 0, false, "A number of a type that is not here.");
    }

    /** Why the type is not here, one sentence. */
    public String reason() {
        return reason;
    }

    /** What the file gives, under its own names. */
    Values values() {
        return values;
    }

    /** The numbers and rows in one line: {@code bottom 5.4, topWide 3.38; places, 3 rows}. */
    String told() {
        StringJoiner numbers = new StringJoiner(", ");
        values.numbers().forEach((name, value) -> numbers.add(name + " " + Numbers.format(value)));
        values.tables().forEach((name, rows) -> numbers.add(name + ", " + rows.rows() + " rows"));
        return numbers.length() == 0 ? "no numbers" : numbers.toString();
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public int version() {
        return version;
    }

    @Override
    public String name() {
        return id;
    }

    @Override
    public String help() {
        return reason;
    }

    @Override
    public List<Parameter> parameters() {
        return List.copyOf(parameters);
    }

    @Override
    public List<TableParameter> tables() {
        return List.copyOf(tables);
    }

    /** Nothing: what the numbers may be is not known. */
    @Override
    public List<GeometryException> problems(Values given) {
        return List.of();
    }

    @Override
    public StapleOutside outside(Values given, double length) {
        throw refused();
    }

    @Override
    public Values topScaled(Values given, double k) {
        throw refused();
    }

    @Override
    public GougeSection section(Values given, double tubeRadius) {
        throw refused();
    }

    @Override
    public ShapeWidth width(Values given, double foldedLength) {
        throw refused();
    }

    private GeometryException refused() {
        return new GeometryException("", reason);
    }
}
