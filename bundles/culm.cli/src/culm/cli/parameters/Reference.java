package culm.cli.parameters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Quantity;
import culm.geometry.profile.TableParameter;

/** Every described number, section by section, as the forms and the range checks know it. */
public final class Reference {
    private final List<Section> sections = new ArrayList<>();

    /**
     * A part of the reference.
     *
     * @param title what it is
     * @param id    id of the type, empty for numbers that every blank has
     * @param help  one or two sentences, may be empty
     * @param rows  the numbers
     */
    public record Section(String title, String id, String help, List<Row> rows) {
    }

    /**
     * One number.
     *
     * @param path     as in findings and in the list of inputs, such as {@code tie.length}
     * @param label    the bench's word
     * @param unit     its unit; "share" and "count" for pure numbers
     * @param range    smallest to largest
     * @param standard what is assumed when nothing was measured, "none" when it may be absent
     * @param help     where to measure, what it does
     */
    public record Row(String path, String label, String unit, String range, String standard, String help) {
    }

    /** @param profiles the types that are known */
    public Reference(Profiles profiles) {
        Map<String, List<Row>> parts = new LinkedHashMap<>();
        Inputs.all().forEach((path, p) -> parts.computeIfAbsent(path.substring(0, path.indexOf('.')), k -> new ArrayList<>()).add(row(path, p)));
        add("Every staple", parts.remove("staple"));
        types("Staple", "staple", profiles.staples().all());
        add("Every gouge", parts.remove("gouge"));
        types("Gouge", "gouge", profiles.gouges().all());
        add("Every shape", parts.remove("shape"));
        types("Shape", "shape", profiles.shapes().all());
        parts.forEach((part, rows) -> add(Character.toUpperCase(part.charAt(0)) + part.substring(1), rows));
        List<Row> limits = new ArrayList<>();
        Limits.all().forEach((id, p) -> limits.add(row(id, p)));
        add("My limits", limits);
    }

    /** All sections, in the order of the bench. */
    public List<Section> sections() {
        return List.copyOf(sections);
    }

    private void add(String title, List<Row> rows) {
        if (rows != null) {
            sections.add(new Section(title, "", "", List.copyOf(rows)));
        }
    }

    private void types(String kind, String part, Iterable<? extends ProfileType> types) {
        for (ProfileType type : types) {
            List<Row> rows = new ArrayList<>();
            type.parameters().forEach(p -> rows.add(row(part + "." + p.id(), p)));
            for (TableParameter table : type.tables()) {
                for (Parameter column : table.columns()) {
                    Row row = row(part + "." + table.id() + "[row]." + column.id(), column);
                    rows.add(new Row(row.path(), table.label() + ": " + row.label(), row.unit(), row.range(), "rows", row.help()));
                }
            }
            sections.add(new Section(kind + ", " + type.name(), type.id(), type.help(), List.copyOf(rows)));
        }
    }

    static Row row(String path, Parameter p) {
        return new Row(path, p.label(), unit(p.quantity()), plain(p.min()) + " to " + plain(p.max()), p.optional() ? "none" : plain(p.standard()), p.help());
    }

    private static String unit(Quantity quantity) {
        return switch (quantity) {
            case SHARE -> "share";
            case COUNT -> "count";
            default -> quantity.unit();
        };
    }

    static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
