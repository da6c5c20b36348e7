package culm.model.files;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;

/**
 * Writes files so that at every moment the old or the new one is there, whole: beside it, flushed to the disk, then
 * moved over it in one step. The file before is kept as one backup, {@code name.bak}. Programs that save into the same
 * folder take turns.
 */
public final class SafeFile {
    /** What the name of the backup ends in. */
    public static final String BACKUP = ".bak";
    /** What the names of half-written files end in. */
    public static final String HALF_WRITTEN = ".part-tmp";
    /** The name of the empty file by which two programs do not write into one folder at once. */
    public static final String LOCK = FolderLock.NAME;

    private SafeFile() {
    }

    /**
     * Whether a file is one that saving leaves behind, and not a file of the studio.
     *
     * @param name a file's name
     * @return true for backups and half-written files
     */
    public static boolean isAside(String name) {
        return name.endsWith(BACKUP) || name.endsWith(HALF_WRITTEN);
    }

    /**
     * What a file holds now.
     *
     * @param path the file
     * @return its stamp, or empty when there is no such file
     * @throws FileProblemException when it cannot be read
     */
    public static Optional<ContentStamp> stamp(Path path) throws FileProblemException {
        try {
            return content(path).map(ContentStamp::of);
        } catch (IOException e) {
            throw failed(path, "it cannot be read", e);
        }
    }

    /**
     * Writes a file. Does nothing when it holds just this already.
     *
     * @param path the file; its folder must exist
     * @param content what it shall hold
     * @param expected what it must still hold, or empty when it must not exist yet
     * @return the stamp of the content
     * @throws FileProblemException when it has changed on disk since, or cannot be written; the old file is then intact
     */
    public static ContentStamp replace(Path path, byte[] content, Optional<ContentStamp> expected)
            throws FileProblemException {
        return write(path, content, Optional.of(expected), true);
    }

    /**
     * Writes a file whatever it holds now; that is kept as the backup.
     *
     * @param path the file; its folder must exist
     * @param content what it shall hold
     * @return the stamp of the content
     * @throws FileProblemException when it cannot be written; the old file is then intact
     */
    public static ContentStamp overwrite(Path path, byte[] content) throws FileProblemException {
        return write(path, content, Optional.empty(), true);
    }

    /** For copies that are aside themselves. */
    static ContentStamp overwriteWithoutBackup(Path path, byte[] content) throws FileProblemException {
        return write(path, content, Optional.empty(), false);
    }

    /** A lock of the file system holds off other programs, the monitor other threads of this one. */
    private static synchronized ContentStamp write(Path path, byte[] content, Optional<Optional<ContentStamp>> expected,
            boolean backup) throws FileProblemException {
        try {
            Path target = Files.isSymbolicLink(path) ? path.toRealPath() : path.toAbsolutePath();
            try (FolderLock turn = FolderLock.of(target.getParent())) {
                Optional<byte[]> before = content(target);
                Optional<ContentStamp> now = before.map(ContentStamp::of);
                if (expected.isPresent() && !now.equals(expected.get())) {
                    throw changed(path, now.isPresent(), expected.get().isPresent());
                }
                ContentStamp stamp = ContentStamp.of(content);
                if (now.isEmpty() || !now.get().equals(stamp)) {
                    removeHalfWritten(target);
                    if (backup && before.isPresent()) {
                        move(writeBeside(target, before.get()), target.resolveSibling(target.getFileName() + BACKUP));
                    }
                    move(writeBeside(target, content), target);
                    flushFolder(target.getParent());
                }
                return stamp;
            }
        } catch (IOException e) {
            throw failed(path, "it cannot be written; what was there is unchanged", e);
        }
    }

    private static Optional<byte[]> content(Path path) throws IOException {
        try {
            return Optional.of(Files.readAllBytes(path));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** What a program left that died while it saved; whoever holds the lock is alone, so that nobody is writing them. */
    private static void removeHalfWritten(Path target) throws IOException {
        String start = "." + target.getFileName() + "-";
        try (DirectoryStream<Path> left = Files.newDirectoryStream(target.getParent(),
                file -> file.getFileName().toString().startsWith(start)
                        && file.getFileName().toString().endsWith(HALF_WRITTEN))) {
            for (Path file : left) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static Path writeBeside(Path target, byte[] content) throws IOException {
        Path beside = target.resolveSibling("." + target.getFileName() + "-" + UUID.randomUUID() + HALF_WRITTEN);
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
            if (Files.exists(target) && isPosix(target)) {
                Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(target));
            }
            return beside;
        } catch (IOException e) {
            Files.deleteIfExists(beside);
            throw e;
        }
    }

    private static boolean isPosix(Path path) throws IOException {
        // Asking the file store would need the mount table, which a changed root does not show.
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.deleteIfExists(from);
            throw new IOException("this disk cannot replace a file in one step", e);
        } catch (IOException e) {
            Files.deleteIfExists(from);
            throw e;
        }
    }

    /** Makes the move itself last through a loss of power; folders cannot be opened on every system. */
    private static void flushFolder(Path folder) throws IOException {
        if (isPosix(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private static FileProblemException changed(Path path, boolean there, boolean wasThere) {
        String sentence = !there ? "it is no longer there; nothing was saved"
                : wasThere ? "it was changed by someone else since it was opened; nothing was saved"
                        : "there is a file of this name already; nothing was saved";
        return new FileProblemException(new FileProblem(Kind.CHANGED_ON_DISK, path.toString(), 0, "", sentence));
    }

    private static FileProblemException failed(Path path, String sentence, IOException e) {
        return new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, path.toString(), 0, "",
                sentence + " (" + FileText.reason(e) + ")"));
    }
}
