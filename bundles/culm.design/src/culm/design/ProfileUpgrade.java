package culm.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.model.Document;
import culm.model.GougePart;
import culm.model.ModelFactory;
import culm.model.ParameterValue;
import culm.model.ProfileData;
import culm.model.Row;
import culm.model.ShapePart;
import culm.model.StaplePart;
import culm.model.TableData;
import culm.model.text.Cells;

/**
 * Brings profiles of an older version of their type to today's: the type itself tells the numbers, and what was said of how well they are known
 * goes along. A profile of a type that is not here, or that cannot be brought up, stays as it is.
 */
public final class ProfileUpgrade {
    private ProfileUpgrade() {
    }

    /**
     * Brings every profile of a document up to date, in place; to be called when a file was opened for editing, before the first command.
     *
     * @return the ids of the types that were brought up; empty when nothing was changed
     */
    public static List<String> apply(Document document, Profiles profiles) {
        List<ProfileData> older = new ArrayList<>();
        for (TreeIterator<EObject> all = document.eAllContents(); all.hasNext();) {
            if (all.next() instanceof ProfileData data) {
                older.add(data);
            }
        }
        List<String> changed = new ArrayList<>();
        for (ProfileData data : older) {
            Optional<? extends ProfileType> type = type(data, profiles);
            ProfileData today = type.map(t -> tried(data, t)).orElse(data);
            if (today != data) {
                EObject part = data.eContainer();
                EStructuralFeature feature = data.eContainingFeature();
                part.eSet(feature, today);
                changed.add(today.getType());
            }
        }
        return changed;
    }

    private static Optional<? extends ProfileType> type(ProfileData data, Profiles profiles) {
        String id = data.getType() == null ? "" : data.getType();
        EObject part = data.eContainer();
        if (part instanceof StaplePart) {
            return profiles.staples().find(id);
        }
        if (part instanceof GougePart) {
            return profiles.gouges().find(id);
        }
        return part instanceof ShapePart ? profiles.shapes().find(id) : Optional.empty();
    }

    private static ProfileData tried(ProfileData data, ProfileType type) {
        try {
            return upToDate(data, type);
        } catch (GeometryException e) {
            return data; // whoever computes with it is told the reason by the same exception
        }
    }

    /** The profile in today's version; itself when it is so already. @throws GeometryException when it is of a newer one, or cannot be brought up */
    static ProfileData upToDate(ProfileData data, ProfileType type) {
        int version = data.getVersion() == 0 ? type.version() : data.getVersion();
        if (version == type.version()) {
            return data;
        }
        if (version > type.version()) {
            throw new GeometryException("", "The type \"" + type.name() + "\" is needed in version " + version + ", the plug-in here has version "
                    + type.version() + "; the numbers are kept.");
        }
        return new Step(data, type, version).run();
    }

    /** One profile on its way. */
    private record Step(ProfileData data, ProfileType type, int from) {
        ProfileData run() {
            Values today = type.migrate(from, older());
            ProfileData made = ModelFactory.eINSTANCE.createProfileData();
            made.setType(data.getType());
            made.setVersion(type.version());
            made.getStrays().addAll(EcoreUtil.copyAll(data.getStrays().stream().filter(s -> s.getAnchor() == null).toList()));
            made.getStrayAttributes().addAll(EcoreUtil.copyAll(data.getStrayAttributes()));
            for (Parameter described : type.parameters()) {
                if (today.has(described.id())) {
                    made.getParameters().add(number(described.id(), today.number(described.id())));
                }
            }
            for (TableParameter described : type.tables()) {
                if (today.tables().containsKey(described.id())) {
                    made.getTables().add(table(described, today.table(described.id())));
                }
            }
            return made;
        }

        private Values older() {
            Values values = Values.NONE;
            for (ParameterValue p : data.getParameters()) {
                if (p.isSetValue()) {
                    values = values.with(p.getName(), p.getValue());
                }
            }
            for (TableParameter described : type.tables(from)) {
                Optional<TableData> table = table(described.id());
                if (table.isPresent()) {
                    values = values.with(described.id(), rows(described, table.get()));
                }
            }
            return values;
        }

        private Optional<TableData> table(String name) {
            return data.getTables().stream().filter(t -> name.equals(t.getName())).findFirst();
        }

        private static Table rows(TableParameter described, TableData table) {
            List<double[]> rows = new ArrayList<>();
            for (Row row : table.getRows()) {
                Cells cells = row.getCells() == null ? Cells.NONE : row.getCells();
                rows.add(described.columns().stream().mapToDouble(c -> cells.get(c.id()).orElseThrow(
                        () -> new GeometryException(described.id(), "A row of the " + described.label() + " has no " + c.label() + "."))).toArray());
            }
            return Table.of(rows);
        }

        private ParameterValue number(String id, double value) {
            String origin = type.origin(from, id);
            ParameterValue number = data.getParameters().stream().filter(p -> origin.equals(p.getName())).findFirst().map(EcoreUtil::copy)
                    .orElseGet(ModelFactory.eINSTANCE::createParameterValue);
            number.setName(id);
            number.setValue(value);
            return number;
        }

        private TableData table(TableParameter described, Table rows) {
            Optional<TableData> older = table(type.origin(from, described.id()));
            TableData made = ModelFactory.eINSTANCE.createTableData();
            made.setName(described.id());
            for (Parameter column : described.columns()) {
                String origin = type.origin(from, column.id());
                older.flatMap(t -> t.getColumns().stream().filter(c -> origin.equals(c.getName())).findFirst()).map(EcoreUtil::copy).ifPresent(c -> {
                    c.setName(column.id());
                    made.getColumns().add(c);
                });
            }
            boolean sameRows = older.isPresent() && older.get().getRows().size() == rows.rows();
            for (int r = 0; r < rows.rows(); r++) {
                Row row = ModelFactory.eINSTANCE.createRow();
                row.setId(sameRows ? older.get().getRows().get(r).getId() : Integer.toString(r + 1));
                Map<String, Double> cells = new LinkedHashMap<>();
                for (int c = 0; c < rows.columns(); c++) {
                    cells.put(described.columns().get(c).id(), rows.cell(r, c));
                }
                row.setCells(Cells.of(cells));
                made.getRows().add(row);
            }
            return made;
        }
    }
}
