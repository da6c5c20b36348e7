package culm.design;

import java.util.ArrayList;
import java.util.List;

import culm.blank.BlankBuilder;
import culm.blank.Profile;
import culm.blank.rules.Finding;
import culm.blank.rules.Severity;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Registry;
import culm.geometry.profile.Rows;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.model.Column;
import culm.model.How;
import culm.model.ParameterValue;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.TableData;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.text.Located;

/** Reads one profile of a part: its type from the registry, its numbers and rows, brought to the type's version. */
final class ProfileReader {
    private final String file;
    private final String part;
    private final Places places;
    private final List<Finding> remarks;

    ProfileReader(String file, String part, Places places, List<Finding> remarks) {
        this.file = file;
        this.part = part;
        this.places = places;
        this.remarks = remarks;
    }

    /** @param kind what the registry holds; {@link AbsentType} is all of them */
    <T extends ProfileType> Profile<T> read(ProfileData data, Registry<T> registry, Class<T> kind) throws FileProblemException {
        places.put(part, file, data);
        String id = data.getType() == null ? "" : data.getType();
        T type = registry.find(id).orElse(null);
        if (type == null) {
            return absent(data, kind, "The " + part + " needs the type \"" + FileProblem.shorten(id) + "\", and no plug-in here brings it; its numbers are kept.");
        }
        ProfileData today;
        try {
            today = ProfileUpgrade.upToDate(data, type);
        } catch (GeometryException e) {
            return absent(data, kind, e.getMessage());
        }
        return new Profile<>(type, values(today, type));
    }

    private <T extends ProfileType> Profile<T> absent(ProfileData data, Class<T> kind, String reason) {
        AbsentType absent = new AbsentType(data, reason);
        data.getParameters().forEach(p -> places.put(part + "." + p.getName(), file, p));
        remarks.add(Finding.of("missingType", Severity.ADVICE, "Kept for the " + part + ": " + absent.told() + ".").at(part)
                .because("What these numbers mean, only the missing plug-in knows.").remedy("Put the plug-in into the folder of plug-ins, or choose another type."));
        return new Profile<>(kind.cast(absent), absent.values());
    }

    private Values values(ProfileData data, ProfileType type) throws FileProblemException {
        Values values = Values.NONE;
        for (ParameterValue p : data.getParameters()) {
            places.put(part + "." + p.getName(), file, p);
            if (p.isSetValue()) {
                values = values.with(p.getName(), p.getValue());
            }
            if (type.parameters().stream().noneMatch(d -> d.id().equals(p.getName()))) {
                remark(p.getName());
            }
        }
        for (TableData t : data.getTables()) {
            TableParameter described = type.tables().stream().filter(d -> d.id().equals(t.getName())).findFirst().orElse(null);
            if (described == null) {
                remark(t.getName());
            } else {
                values = values.with(t.getName(), rows(described, t));
            }
        }
        return values;
    }

    /** The tolerances of a profile's numbers and rows. */
    void tolerances(ProfileData given, ProfileType type, BlankBuilder builder) {
        ProfileData data = type instanceof AbsentType ? given : ProfileUpgrade.upToDate(given, type);
        for (ParameterValue p : data.getParameters()) {
            type.parameters().stream().filter(d -> d.id().equals(p.getName())).findFirst().ifPresent(d ->
                    builder.tolerance(part + "." + d.id(), p.isSetTolerance() ? p.getTolerance() : d.tolerance(), p.getHow() == How.MEASURED));
        }
        for (TableData t : data.getTables()) {
            type.tables().stream().filter(d -> d.id().equals(t.getName())).findFirst().ifPresent(d -> tolerances(d, t, builder));
        }
    }

    void tolerances(TableParameter described, TableData table, BlankBuilder builder) {
        for (Parameter column : described.columns()) {
            Column said = table.getColumns().stream().filter(c -> column.id().equals(c.getName())).findFirst().orElse(null);
            double plusMinus = said != null && said.isSetTolerance() ? said.getTolerance() : column.tolerance();
            boolean measured = said != null && said.getHow() == How.MEASURED;
            for (int row = 0; row < table.getRows().size(); row++) {
                builder.tolerance(part + "." + Rows.path(described.id(), row, column.id()), plusMinus, measured);
            }
        }
    }

    Table rows(TableParameter described, TableData table) throws FileProblemException {
        places.put(part + "." + described.id(), file, table);
        List<double[]> rows = new ArrayList<>();
        for (Row row : table.getRows()) {
            places.put(part + "." + described.id() + "[" + rows.size() + "]", file, row);
            double[] cells = new double[described.columns().size()];
            for (int c = 0; c < cells.length; c++) {
                String name = described.columns().get(c).id();
                cells[c] = row.getCells() == null ? Double.NaN : row.getCells().get(name).orElse(Double.NaN);
                if (Double.isNaN(cells[c])) {
                    throw problem(row, Kind.MISSING_VALUE, name, "this row has no " + described.columns().get(c).label());
                }
            }
            rows.add(cells);
        }
        return Table.of(rows);
    }

    private void remark(String name) {
        remarks.add(Finding.of("unknownNumber", Severity.ADVICE, "The file has \"" + name + "\" for the " + part + ", which its type does not know; it is kept, and not used.")
                .at(part));
    }

    private FileProblemException problem(org.eclipse.emf.ecore.EObject at, Kind kind, String value, String sentence) {
        return new FileProblemException(new FileProblem(kind, file, Located.lineOf(at), value, sentence));
    }
}
