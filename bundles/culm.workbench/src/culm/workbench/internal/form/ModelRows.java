package culm.workbench.internal.form;

import java.util.List;

import culm.design.edit.RowEntry;
import culm.model.Design;
import culm.model.GougePart;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.model.StaplePart;
import culm.model.TableData;
import culm.model.problem.FileProblemException;
import culm.model.text.Cells;
import culm.workbench.internal.editor.DesignSession;

/** The rows of a table as they stand in the design, or in the part it links to. */
final class ModelRows {
    private ModelRows() {
    }

    static List<RowEntry> of(DesignSession session, String path) throws FileProblemException {
        TableData table = table(session, path);
        return table == null ? List.of() : table.getRows().stream()
                .map(r -> new RowEntry(r.getId() == null ? "" : r.getId(), r.getCells() == null ? Cells.NONE : r.getCells())).toList();
    }

    private static TableData table(DesignSession session, String path) throws FileProblemException {
        String word = path.substring(0, path.indexOf('.'));
        String name = path.substring(path.indexOf('.') + 1);
        Design design = session.design();
        ProfileData profile = switch (word) {
            case "staple" -> ((StaplePart) resolved(session, design.getStaple())).getProfile();
            case "gouge" -> ((GougePart) resolved(session, design.getGouge())).getProfile();
            case "gougeEnd" -> ((GougePart) resolved(session, design.getGouge())).getEndProfile();
            case "shape" -> ((ShapePart) resolved(session, design.getShape())).getProfile();
            default -> null;
        };
        if (profile == null) {
            return word.equals("inside") ? ((ShapePart) resolved(session, design.getShape())).getInside() : null;
        }
        return profile.getTables().stream().filter(t -> name.equals(t.getName())).findFirst().orElse(null);
    }

    /** The part itself, or the one its link leads to. */
    static Part resolved(DesignSession session, Part part) throws FileProblemException {
        return session.studio().resolve(session.file(), session.studio().shown(session.file()), part).part();
    }
}
