package culm.model.studio;

import culm.model.problem.FileProblem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One file of a studio, as far as a list of files needs it.
 *
 * @param file where it is, absolute
 * @param shown its name relative to the studio
 * @param kind its sort
 * @param id the document's id, or empty
 * @param name the document's name, or empty
 * @param parts the parts it holds (parts files) or is made with (designs)
 * @param problem why it could not be read, or empty
 */
public record StudioEntry(Path file, String shown, FileKind kind, String id, String name, List<PartEntry> parts,
        Optional<FileProblem> problem) {
    /**
     * A part in a file.
     *
     * @param kind "staple", "gouge", "shape" or "thread"
     * @param id its id, or empty
     * @param name its name, or empty
     * @param link where it is linked to, as it stands in the file, or empty
     * @param line the line it stands on
     */
    public record PartEntry(String kind, String id, String name, String link, int line) {
        /** {@return its name; without one its id} */
        public String title() {
            return name.isBlank() ? id : name;
        }
    }

    /** {@return the name if there is one, otherwise the file's} */
    public String title() {
        return name.isEmpty() ? shown : name;
    }
}
