package culm.model.files;

import culm.model.Document;
import culm.model.internal.files.DocumentReader;
import culm.model.internal.files.TextForm;
import culm.model.internal.files.TextWriter;
import culm.model.problem.FileProblemException;
import culm.model.xml.XmlParser;
import culm.model.xml.XmlTree;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.eclipse.emf.ecore.EClass;

/**
 * Reads and writes the files of a studio: {@code .reed}, {@code .parts}, {@code .batch}, {@code .log} and
 * {@code studio.limits}. Has no state that changes; several threads may use one.
 * <p>
 * What is read and not known (elements, attributes, comments) is written back. A file of a newer format is read as far
 * as it is understood and says that it must not be saved; older ones are migrated.
 */
public final class ModelFiles {
    private final TextForm form = new TextForm();
    private final Formats formats;

    /** Reads and writes the formats of this program. */
    public ModelFiles() {
        this(new Formats());
    }

    /**
     * Reads and writes formats with steps of one's own.
     *
     * @param formats the formats
     */
    public ModelFiles(Formats formats) {
        this.formats = Objects.requireNonNull(formats);
    }

    /**
     * Reads a file.
     *
     * @param path where it is
     * @param type what it must hold
     * @param <D> the sort of document
     * @return what it holds
     * @throws FileProblemException when it cannot be used; says why, with line and value
     */
    public <D extends Document> Loaded<D> load(Path path, Class<D> type) throws FileProblemException {
        return load(path, path.toString(), type);
    }

    /**
     * Reads a file that messages call by another name than its path.
     *
     * @param path where it is
     * @param shown its name for messages
     * @param type what it must hold
     * @param <D> the sort of document
     * @return what it holds
     * @throws FileProblemException when it cannot be used; says why, with line and value
     */
    public <D extends Document> Loaded<D> load(Path path, String shown, Class<D> type) throws FileProblemException {
        return read(FileText.bytes(path, shown), shown, type);
    }

    /**
     * Reads the content of a file.
     *
     * @param content all its bytes
     * @param shown its name for messages
     * @param type what it must hold
     * @param <D> the sort of document
     * @return what it holds
     * @throws FileProblemException when it cannot be used; says why, with line and value
     */
    public <D extends Document> Loaded<D> read(byte[] content, String shown, Class<D> type)
            throws FileProblemException {
        XmlTree tree = XmlParser.parse(shown, FileText.text(content, shown));
        var reader = new DocumentReader(form, shown, formats.oldest(), formats.current());
        EClass root = reader.rootClass(tree.root(), type);
        int version = reader.version(tree.root());
        formats.migrate(tree.root(), version);
        D document = type.cast(reader.document(tree, root));
        return new Loaded<>(document, shown, version, ContentStamp.of(content),
                version > formats.current() ? Optional.of(reader.newer(version)) : Optional.empty());
    }

    /**
     * The text of a document's file. The same content always gives the same text. Notes in each object the line it
     * stands on.
     *
     * @param document the document
     * @return the whole text, with {@code \n} as line end
     */
    public String text(Document document) {
        return new TextWriter(form).write(document, formats.current());
    }

    /**
     * The bytes of a document's file: its text in UTF-8.
     *
     * @param document the document
     * @return the bytes
     */
    public byte[] bytes(Document document) {
        return text(document).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Saves a document that was read from a file, unless the file has changed on disk since. See {@link SafeFile}.
     *
     * @param document the document
     * @param path its file
     * @param expected what the file held when it was read or last saved; empty for a new file, which must not exist yet
     * @return what the file holds now
     * @throws FileProblemException when it was changed by someone else, or cannot be written; nothing is lost then
     */
    public ContentStamp save(Document document, Path path, Optional<ContentStamp> expected)
            throws FileProblemException {
        return SafeFile.replace(path, bytes(document), expected);
    }
}
