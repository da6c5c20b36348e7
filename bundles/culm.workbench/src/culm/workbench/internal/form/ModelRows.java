package culm.workbench.internal.form;

import java.util.List;

import culm.design.edit.RowEntry;
import culm.model.Design;
import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.editor.DesignSession;

/** The rows of a table as they stand in the design, or in the part it links to. */
final class ModelRows {
    private ModelRows() {
    }

    static List<RowEntry> of(DesignSession session, String path) throws FileProblemException {
        Design design = session.design();
        String word = path.substring(0, path.indexOf('.'));
        Part part = switch (word) {
            case "staple" -> design.getStaple();
            case "gouge", "gougeEnd" -> design.getGouge();
            default -> design.getShape();
        };
        return PartRows.of(resolved(session, part), path);
    }

    /** The part itself, or the one its link leads to. */
    static Part resolved(DesignSession session, Part part) throws FileProblemException {
        return session.studio().resolve(session.file(), session.studio().shown(session.file()), part).part();
    }
}
