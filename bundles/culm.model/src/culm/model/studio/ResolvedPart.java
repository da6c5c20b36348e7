package culm.model.studio;

import culm.model.Part;
import java.nio.file.Path;

/**
 * A part a design is made with.
 *
 * @param part the part itself; when it is linked, the one in the parts file, not to be changed
 * @param file the file it stands in
 * @param shown that file's name for messages
 * @param linked whether it stands in a parts file
 * @param <P> the sort of part
 */
public record ResolvedPart<P extends Part>(P part, Path file, String shown, boolean linked) {
}
