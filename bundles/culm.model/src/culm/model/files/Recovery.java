package culm.model.files;

import culm.model.problem.FileProblemException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** A copy of unsaved work beside a file, to be offered after a crash. */
public final class Recovery {
    /** What the name of the file beside another ends in, which holds what is not saved of that one. */
    public static final String NAME = ".unsaved";

    /**
     * Unsaved work that was found.
     *
     * @param content what the file would have held
     * @param written when the copy was made
     */
    public record Unsaved(byte[] content, Instant written) {
    }

    private Recovery() {
    }

    /**
     * Keeps a copy.
     *
     * @param file the file that is being changed
     * @param content what it would hold if it were saved now
     * @throws FileProblemException when the copy cannot be written
     */
    public static void keep(Path file, byte[] content) throws FileProblemException {
        SafeFile.overwriteWithoutBackup(copy(file), content);
    }

    /**
     * Unsaved work on a file that differs from what the file holds.
     *
     * @param file the file
     * @return the work, or empty when there is none
     * @throws IOException when the copy cannot be read
     */
    public static Optional<Unsaved> find(Path file) throws IOException {
        Path copy = copy(file);
        try {
            byte[] content = Files.readAllBytes(copy);
            boolean saved = Files.exists(file) && Files.mismatch(file, copy) < 0;
            return saved ? Optional.empty() : Optional.of(new Unsaved(content, Files.getLastModifiedTime(copy).toInstant()));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /**
     * Drops the copy, after a save or when the work was given up.
     *
     * @param file the file
     * @throws IOException when the copy cannot be removed
     */
    public static void drop(Path file) throws IOException {
        Files.deleteIfExists(copy(file));
    }

    private static Path copy(Path file) {
        return file.toAbsolutePath().resolveSibling("." + file.getFileName() + NAME);
    }
}
