package culm.workbench.internal.sharing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;

/** The folder of a studio in which removed things are kept. */
public final class Aside {
    /** Its name. */
    public static final String FOLDER = ".removed";
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private Aside() {
    }

    /**
     * Where a file is put that is removed now.
     *
     * @param root the studio's folder
     * @param file the file
     * @return a name with the time in it
     */
    public static Path of(Path root, Path file) {
        return root.resolve(FOLDER).resolve(LocalDateTime.now().format(WHEN) + "-" + file.getFileName());
    }

    /** Keeps a content aside. @throws FileProblemException when it cannot be written */
    static void put(Path root, Path file, byte[] content) throws FileProblemException {
        Path target = of(root, file);
        try {
            Files.createDirectories(target.getParent());
        } catch (IOException e) {
            throw new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, target.toString(), 0, "", "it cannot be written"));
        }
        SafeFile.overwrite(target, content);
    }
}
