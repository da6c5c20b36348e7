package culm.model.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Lets one program at a time save in a folder, so that looking whether a file has changed and replacing it are one step.
 * The system lets go of it when a program dies. On a disk that knows no locks saving goes on without.
 */
final class FolderLock implements AutoCloseable {
    /** An empty file that stays in the folder. */
    static final String NAME = ".culm-lock";

    private final FileChannel channel;
    private final FileLock lock;

    private FolderLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /** Waits for its turn. Within one program the caller sees to it that one thread at a time asks. */
    static FolderLock of(Path folder) throws IOException {
        FileChannel channel = FileChannel.open(folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            return new FolderLock(channel, channel.lock());
        } catch (IOException e) {
            return new FolderLock(channel, null);
        }
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            if (lock != null) {
                lock.release();
            }
        }
    }
}
