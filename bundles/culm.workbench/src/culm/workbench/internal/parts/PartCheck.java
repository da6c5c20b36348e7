package culm.workbench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.blank.rules.Finding;
import culm.blank.rules.Severity;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.model.ParameterValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.TableData;

/** What is wrong with the numbers and rows of a part's profile taken together, as its type tells it. */
final class PartCheck {
    private PartCheck() {
    }

    static List<Finding> of(Part part, Profiles profiles) {
        ProfileData data = PartWords.profile(part);
        String word = PartWords.kind(part);
        Optional<? extends ProfileType> type = data == null ? Optional.empty() : PartPlan.type(word, data, profiles);
        if (type.isEmpty()) {
            return List.of();
        }
        List<Finding> found = new ArrayList<>();
        for (GeometryException wrong : type.get().problems(values(data, type.get()))) {
            found.add(Finding.of("part", Severity.ERROR, wrong.told()).at(word + "." + wrong.path()));
        }
        return found;
    }

    /** The numbers and rows of a profile, as its type reads them. */
    static Values values(ProfileData data, ProfileType type) {
        Values values = Values.NONE;
        for (ParameterValue number : data.getParameters()) {
            if (number.isSetValue()) {
                values = values.with(number.getName(), number.getValue());
            }
        }
        for (TableData table : data.getTables()) {
            Optional<TableParameter> described = type.tables().stream().filter(t -> t.id().equals(table.getName())).findFirst();
            if (described.isPresent()) {
                values = values.with(table.getName(), rows(table, described.get()));
            }
        }
        return values;
    }

    private static Table rows(TableData table, TableParameter described) {
        List<double[]> rows = new ArrayList<>();
        for (Row row : table.getRows()) {
            rows.add(described.columns().stream().map(Parameter::id)
                    .mapToDouble(c -> row.getCells() == null ? Double.NaN : row.getCells().get(c).orElse(Double.NaN)).toArray());
        }
        return Table.of(rows);
    }
}
