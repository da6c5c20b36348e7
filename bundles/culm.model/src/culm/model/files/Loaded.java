package culm.model.files;

import culm.model.Document;
import culm.model.problem.FileProblem;
import java.util.Optional;

/**
 * A file that was read.
 *
 * @param document what it holds
 * @param file its name as shown in messages
 * @param format the format version it was written in
 * @param stamp what the file held, to find changes on disk before a save
 * @param readOnly why it must not be saved: it was written by a newer program; empty otherwise
 * @param <D> the sort of document
 */
public record Loaded<D extends Document>(D document, String file, int format, ContentStamp stamp,
        Optional<FileProblem> readOnly) {
}
