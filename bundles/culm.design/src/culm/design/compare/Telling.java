package culm.design.compare;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.TableParameter;
import culm.model.Column;
import culm.model.Element;
import culm.model.How;
import culm.model.NamedValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Quantity;
import culm.model.Row;
import culm.model.Stray;
import culm.model.StrayAttribute;
import culm.model.TableData;
import culm.model.text.Numbers;

/** Values, rows and parts as a person reads them. */
final class Telling {
    private final Profiles profiles;

    /** @param profiles the types that are known, for the words of their numbers */
    Telling(Profiles profiles) {
        this.profiles = profiles;
    }

    /** A value of any kind; empty for nothing. */
    String of(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> of((Object) each)).collect(Collectors.joining(", "));
        }
        if (value instanceof Double number) {
            return Numbers.format(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value instanceof EObject object ? of(object) : value instanceof Enum<?> word ? Names.apart(word.toString()) : value.toString();
    }

    private String of(EObject object) {
        if (object instanceof Quantity quantity) {
            return of(quantity);
        }
        if (object instanceof NamedValue named) {
            return named.isSetValue() ? Numbers.format(named.getValue()) : "";
        }
        if (object instanceof Column column) {
            return known(column.isSetTolerance() ? Optional.of(column.getTolerance()) : Optional.empty(), column.isSetHow() ? column.getHow() : null);
        }
        if (object instanceof Row row) {
            return row(row);
        }
        if (object instanceof ProfileData profile) {
            return profile(profile);
        }
        if (object instanceof Part part) {
            return part.getLink() != null ? part.getLink() : part.getName() != null ? part.getName() : "of its own";
        }
        if (object instanceof TableData table) {
            return table.getRows().size() + " rows";
        }
        if (object instanceof Stray stray) {
            return stray.getNode() == null ? "" : stray.getNode().name();
        }
        return object instanceof StrayAttribute attribute ? attribute.getName() + " " + attribute.getValue() : "given";
    }

    private static String of(Quantity quantity) {
        String value = quantity.isSetValue() ? Numbers.format(quantity.getValue()) : "no value";
        String known = known(quantity.isSetTolerance() ? Optional.of(quantity.getTolerance()) : Optional.empty(), quantity.isSetHow() ? quantity.getHow() : null);
        return known.isEmpty() ? value : value + " " + known;
    }

    private static String known(Optional<Double> tolerance, How how) {
        StringJoiner text = new StringJoiner(", ");
        tolerance.ifPresent(t -> text.add("\u00b1 " + Numbers.format(t)));
        if (how != null) {
            text.add(how.getLiteral().toLowerCase(Locale.ROOT));
        }
        return text.toString();
    }

    private String row(Row row) {
        if (row.getCells() == null) {
            return "";
        }
        StringJoiner text = new StringJoiner(", ");
        for (Map.Entry<String, Double> cell : row.getCells().asMap().entrySet()) {
            text.add(column(row, cell.getKey()) + " " + Numbers.format(cell.getValue()));
        }
        return text.toString();
    }

    private String profile(ProfileData data) {
        String name = type(data).map(ProfileType::name).orElse(String.valueOf(data.getType()));
        StringJoiner text = new StringJoiner(", ", name + ": ", "").setEmptyValue(name);
        data.getParameters().forEach(p -> text.add(number(data, p.getName()) + " " + of((Quantity) p)));
        data.getTables().forEach(t -> text.add(Names.apart(t.getName()) + ", " + t.getRows().size() + " rows"));
        return text.toString();
    }

    /** A profile's number in words. */
    String number(ProfileData data, String id) {
        return type(data).flatMap(t -> t.parameters().stream().filter(p -> p.id().equals(id)).findFirst()).map(Parameter::label).orElse(Names.apart(id));
    }

    /** A column of the table that a row stands in, in words. */
    String column(Row row, String id) {
        Optional<TableParameter> table = row.eContainer() instanceof TableData data ? table(data) : Optional.empty();
        return table.flatMap(t -> t.columns().stream().filter(c -> c.id().equals(id)).findFirst()).map(Parameter::label).orElse(Names.apart(id));
    }

    private Optional<TableParameter> table(TableData data) {
        if (data.eContainer() instanceof ProfileData profile) {
            return type(profile).flatMap(t -> t.tables().stream().filter(d -> d.id().equals(data.getName())).findFirst());
        }
        return Optional.of(culm.geometry.shape.MeasuredShape.TABLE);
    }

    private Optional<? extends ProfileType> type(ProfileData data) {
        String id = String.valueOf(data.getType());
        Element part = data.eContainer() instanceof Element element ? element : null;
        if (part instanceof culm.model.StaplePart) {
            return profiles.staples().find(id);
        }
        return part instanceof culm.model.GougePart ? profiles.gouges().find(id) : profiles.shapes().find(id);
    }
}
