package culm.design.edit;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.ParameterValue;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.TableData;
import culm.model.text.Cells;
import culm.model.text.Ids;

/** Makes the profile of a type: what an older profile says under the same name is kept, the rest is the type's usual, assumed. */
final class ProfileMaker {
    private final RandomGenerator random;

    ProfileMaker(RandomGenerator random) {
        this.random = random;
    }

    /** @param older the profile it takes the place of; null for none; @param start the rows its table of places begins with; empty for the usual ones */
    ProfileData make(ProfileType type, ProfileData older, Optional<Table> start) {
        ProfileData profile = ModelFactory.eINSTANCE.createProfileData();
        profile.setType(type.id());
        profile.setVersion(type.version());
        for (Parameter described : type.parameters()) {
            ParameterValue kept = older == null ? null : older.getParameters().stream()
                    .filter(p -> described.id().equals(p.getName()) && p.isSetValue() && described.refuse(p.getValue()).isEmpty()).findFirst().orElse(null);
            if (kept != null) {
                profile.getParameters().add(EcoreUtil.copy(kept));
            } else if (!described.optional()) {
                profile.getParameters().add(usual(described));
            }
        }
        for (TableParameter described : type.tables()) {
            TableData kept = older == null ? null
                    : older.getTables().stream().filter(t -> described.id().equals(t.getName()) && fits(described, t)).findFirst().orElse(null);
            profile.getTables().add(kept != null ? EcoreUtil.copy(kept)
                    : start.filter(t -> described.id().equals(MeasuredPlaces.PLACES)).map(t -> assumed(described, t)).orElseGet(() -> rows(described, described.standard())));
        }
        return profile;
    }

    private static boolean fits(TableParameter described, TableData table) {
        return !table.getRows().isEmpty() && table.getRows().stream().allMatch(row -> row.getCells() != null
                && described.columns().stream().allMatch(column -> row.getCells().get(column.id()).isPresent()));
    }

    private static ParameterValue usual(Parameter described) {
        ParameterValue value = ModelFactory.eINSTANCE.createParameterValue();
        value.setName(described.id());
        value.setValue(described.standard());
        value.setHow(How.ASSUMED);
        return value;
    }

    private TableData assumed(TableParameter described, Table start) {
        TableData data = rows(described, start);
        described.columns().stream().skip(1).forEach(c -> TableEdits.column(data, c.id()).setHow(How.ASSUMED));
        return data;
    }

    private TableData rows(TableParameter described, Table rows) {
        TableData data = ModelFactory.eINSTANCE.createTableData();
        data.setName(described.id());
        Set<String> taken = new HashSet<>();
        for (int r = 0; r < rows.rows(); r++) {
            Map<String, Double> cells = new LinkedHashMap<>();
            for (int c = 0; c < rows.columns(); c++) {
                cells.put(described.columns().get(c).id(), rows.cell(r, c));
            }
            Row row = ModelFactory.eINSTANCE.createRow();
            row.setId(Ids.draw(taken, random));
            taken.add(row.getId());
            row.setCells(Cells.of(cells));
            data.getRows().add(row);
        }
        return data;
    }
}
