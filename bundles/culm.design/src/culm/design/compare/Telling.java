package culm.design.compare;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import culm.blank.Limits;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Quantity;
import culm.geometry.profile.TableParameter;
import culm.geometry.words.Told;
import culm.model.Column;
import culm.model.Element;
import culm.model.How;
import culm.model.NamedValue;
import culm.model.ParameterValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.Stray;
import culm.model.StrayAttribute;
import culm.model.TableData;

/** Values, rows and parts as a person reads them. */
final class Telling {
    private final Profiles profiles;

    /** @param profiles the types that are known, for the words of their numbers */
    Telling(Profiles profiles) {
        this.profiles = profiles;
    }

    /** A value of any kind; empty for nothing. @param measures what a bare number is; null when that is not known */
    String of(Object value, Quantity measures) {
        if (value == null) {
            return "";
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> of(each, measures)).collect(Collectors.joining(", "));
        }
        if (value instanceof Double number) {
            return Measures.of(measures, number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value instanceof EObject object ? of(object) : value instanceof Enum<?> word ? Names.apart(word.toString()) : Told.plain(value.toString());
    }

    private String of(EObject object) {
        if (object instanceof culm.model.Quantity quantity) {
            return of(quantity);
        }
        if (object instanceof NamedValue named) {
            Parameter limit = Limits.all().get(named.getName());
            return named.isSetValue() ? Measures.of(limit == null ? null : limit.quantity(), named.getValue()) : "";
        }
        if (object instanceof Column column) {
            return known(column.isSetTolerance() ? "\u00b1 " + Measures.of(measures(column), column.getTolerance()) : "", column.isSetHow() ? column.getHow() : null);
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

    /** A number with its give or take, the unit behind both, and how it is known. */
    private String of(culm.model.Quantity quantity) {
        Quantity measures = measures(quantity);
        String value = quantity.isSetValue() ? Measures.number(measures, quantity.getValue()) : "no value";
        if (quantity.isSetTolerance()) {
            value += " \u00b1 " + Measures.of(measures, quantity.getTolerance());
        } else if (quantity.isSetValue()) {
            value += Measures.unit(measures, quantity.getValue());
        }
        return known(value, quantity.isSetHow() ? quantity.getHow() : null);
    }

    private static String known(String value, How how) {
        return how == null ? value : (value.isEmpty() ? "" : value + ", ") + how.getLiteral().toLowerCase(Locale.ROOT);
    }

    /** What a number of an element measures; null when its type is not known. */
    private Quantity measures(culm.model.Quantity quantity) {
        if (quantity instanceof ParameterValue value && quantity.eContainer() instanceof ProfileData data) {
            return type(data).flatMap(t -> t.parameters().stream().filter(p -> p.id().equals(value.getName())).findFirst()).map(Parameter::quantity).orElse(null);
        }
        return quantity.eContainer() == null ? null : Measures.of(quantity.eContainer(), quantity.eContainingFeature().getName());
    }

    private Quantity measures(Column column) {
        return column.eContainer() instanceof TableData data ? measures(data, column.getName()) : null;
    }

    /** What a column of the table that a row stands in measures; null when its type is not known. */
    Quantity measures(Row row, String column) {
        return row.eContainer() instanceof TableData data ? measures(data, column) : null;
    }

    private Quantity measures(TableData data, String column) {
        return table(data).flatMap(t -> t.columns().stream().filter(c -> c.id().equals(column)).findFirst()).map(Parameter::quantity).orElse(null);
    }

    private String row(Row row) {
        if (row.getCells() == null) {
            return "";
        }
        StringJoiner text = new StringJoiner(", ");
        for (Map.Entry<String, Double> cell : row.getCells().asMap().entrySet()) {
            text.add(column(row, cell.getKey()) + " " + Measures.of(measures(row, cell.getKey()), cell.getValue()));
        }
        return text.toString();
    }

    private String profile(ProfileData data) {
        String name = type(data).map(ProfileType::name).orElse(String.valueOf(data.getType()));
        StringJoiner text = new StringJoiner(", ", name + ": ", "").setEmptyValue(name);
        data.getParameters().forEach(p -> text.add(number(data, p.getName()) + " " + of((culm.model.Quantity) p)));
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
