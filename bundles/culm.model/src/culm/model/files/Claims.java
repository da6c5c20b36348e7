package culm.model.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Says to others which files this program has open to change them. Advisory: it stops nobody, but the second one to open
 * a file can be told who and since when, and be offered to look only. The system ends a claim when its program dies. One
 * object a program, since the system's locks belong to programs and not to objects.
 */
public final class Claims implements AutoCloseable {
    /** What the name of the file beside another ends in, which says who has that one open. */
    public static final String NAME = ".open";
    /** Far behind the text, so that systems whose locks bar reading let the text be read. */
    private static final long LOCKED_BYTE = 1L << 40;
    private static final int LONGEST_TEXT = 1000;
    private static final int TRIES = 20;

    /**
     * Who has a file open.
     *
     * @param who their name as they gave it; empty when it cannot be told
     * @param since when they opened it, ISO 8601; empty when it cannot be told
     */
    public record Holder(String who, String since) {
    }

    private record Held(FileChannel channel, FileLock lock, Holder holder) {
    }

    private final Map<Path, Held> held = new HashMap<>();

    /**
     * Claims a file.
     *
     * @param file the file
     * @param who the name others will see
     * @param since the time others will see
     * @return empty when the file is now claimed, otherwise who has it open
     * @throws IOException when the folder cannot be written or its disk knows no locks; the file can be opened unclaimed
     */
    public synchronized Optional<Holder> claim(Path file, String who, Instant since) throws IOException {
        Path path = path(file);
        if (held.containsKey(path)) {
            return Optional.of(held.get(path).holder());
        }
        Holder holder = new Holder(who.replaceAll("\\p{Cntrl}", " ").strip(), since.toString());
        for (int i = 0; i < TRIES; i++) {
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ,
                    StandardOpenOption.WRITE);
            try {
                Object opened = key(path);
                FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
                if (lock == null) {
                    Holder other = read(channel);
                    channel.close();
                    return Optional.of(other);
                }
                // The one before may have removed the file between opening and locking it.
                if (opened != null && opened.equals(key(path))) {
                    write(channel, holder);
                    held.put(path, new Held(channel, lock, holder));
                    return Optional.empty();
                }
                channel.close();
            } catch (IOException e) {
                channel.close();
                throw e;
            }
        }
        return Optional.of(new Holder("", ""));
    }

    /**
     * Lets others have a file. Does nothing when it is not claimed here.
     *
     * @param file the file
     * @throws IOException when the system does not let go of it
     */
    public synchronized void release(Path file) throws IOException {
        Path path = path(file);
        Held own = held.remove(path);
        if (own != null) {
            try (FileChannel channel = own.channel()) {
                Files.deleteIfExists(path);
                own.lock().release();
            }
        }
    }

    /** Lets others have every file. */
    @Override
    public synchronized void close() throws IOException {
        for (Path path : List.copyOf(held.keySet())) {
            String name = path.getFileName().toString();
            release(path.resolveSibling(name.substring(1, name.length() - NAME.length())));
        }
    }

    private static Path path(Path file) {
        return file.toAbsolutePath().normalize().resolveSibling("." + file.getFileName() + NAME);
    }

    /** What tells this file from another that took its name; where the system has no such key, its time of creation. */
    private static Object key(Path path) throws IOException {
        try {
            BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
            return attributes.fileKey() == null ? attributes.creationTime() : attributes.fileKey();
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    private static void write(FileChannel channel, Holder holder) throws IOException {
        String text = holder.who() + "\n" + holder.since() + "\n";
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
    }

    private static Holder read(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(LONGEST_TEXT);
        channel.read(buffer, 0);
        String[] lines = new String(buffer.array(), 0, buffer.position(), StandardCharsets.UTF_8).split("\n", -1);
        return new Holder(lines[0].strip(), lines.length > 1 ? lines[1].strip() : "");
    }
}
