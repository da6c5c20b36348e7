package culm.design.compare;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.geometry.profile.Profiles;
import culm.model.Document;
import culm.model.files.ContentStamp;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;

/**
 * A file that is being changed here, with what it held when it was opened or last saved; finds out what others did to it meanwhile. Not for
 * several threads.
 */
public final class OpenedFile<D extends Document> {
    private final ModelFiles files;
    private final Path path;
    private final Class<D> type;
    private final Profiles profiles;
    private final D document;
    private Document before;
    private ContentStamp stamp;

    private OpenedFile(ModelFiles files, Path path, Class<D> type, Profiles profiles, Loaded<D> loaded) {
        this.files = files;
        this.path = path;
        this.type = type;
        this.profiles = profiles;
        this.document = loaded.document();
        this.before = EcoreUtil.copy(document);
        this.stamp = loaded.stamp();
    }

    /** Opens a file. @param profiles the types that are known, for the words of their numbers */
    public static <D extends Document> OpenedFile<D> open(ModelFiles files, Path path, Class<D> type, Profiles profiles) throws FileProblemException {
        return new OpenedFile<>(files, path, type, profiles, files.load(path, type));
    }

    /** The document; change it as you like. */
    public D document() {
        return document;
    }

    /** Whether others changed the file since it was opened or last saved here. @throws FileProblemException when it cannot be read */
    public boolean changedOnDisk() throws FileProblemException {
        return !SafeFile.stamp(path).equals(Optional.of(stamp));
    }

    /** Saves. @throws FileProblemException of the kind CHANGED_ON_DISK when others did; nothing is written then */
    public void save() throws FileProblemException {
        stamp = files.save(document, path, Optional.of(stamp));
        before = EcoreUtil.copy(document);
    }

    /**
     * What others did to the file, beside what was done here.
     *
     * @throws FileProblemException when the file on disk is gone or cannot be understood any more
     */
    public Meeting meet() throws FileProblemException {
        Loaded<D> theirs = files.load(path, type);
        return new Meeting(ThreeWay.compare(before, document, theirs.document(), profiles), theirs.stamp());
    }

    /** Your version and theirs, about to be put together. */
    public final class Meeting {
        private final ThreeWay three;
        private final ContentStamp theirs;

        private Meeting(ThreeWay three, ContentStamp theirs) {
            this.three = three;
            this.theirs = theirs;
        }

        /** What differs. */
        public ThreeWay comparison() {
            return three;
        }

        /**
         * Saves what was put together, and opens that.
         *
         * @param merged of {@link ThreeWay#merged}
         * @return the file as it is now; the one before is done with
         * @throws FileProblemException of the kind CHANGED_ON_DISK when others were faster again; nothing is written then, and this can be asked anew
         */
        public OpenedFile<D> save(Document merged) throws FileProblemException {
            files.save(merged, path, Optional.of(theirs));
            return open(files, path, type, profiles);
        }
    }
}
