package culm.model.studio;

import culm.model.Part;
import culm.model.PartsFile;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Parts files as they were last read, by id; each is read again when it changed on disk. */
final class PartsCache {
    private record Read(FileStamp stamp, Map<String, Part> parts) {
    }

    private final ModelFiles files;
    private final Map<Path, Read> read = new HashMap<>();

    PartsCache(ModelFiles files) {
        this.files = files;
    }

    synchronized Map<String, Part> parts(Path file, String shown) throws FileProblemException {
        FileStamp stamp;
        try {
            stamp = FileStamp.of(file);
        } catch (IOException e) {
            throw new FileProblemException(new FileProblem(Kind.NO_FILE, shown, 0, "", "it cannot be reached"));
        }
        Read known = read.get(file);
        if (known == null || !known.stamp().equals(stamp)) {
            Map<String, Part> parts = new HashMap<>();
            for (Part part : files.load(file, shown, PartsFile.class).document().getParts()) {
                parts.put(part.getId(), part);
            }
            known = new Read(stamp, parts);
            read.put(file, known);
        }
        return known.parts();
    }
}
