package culm.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * Where a command was given: what it prints goes to {@code out}, what it says meanwhile to {@code err}, and the files it names count from
 * {@code folder}.
 *
 * @param out    the result and nothing else, so that it can be piped
 * @param err    progress and complaints
 * @param folder the absolute folder that relative names of files count from
 */
public record Terminal(PrintStream out, PrintStream err, Path folder) {

    /** The terminal of this process; both streams are UTF-8, whatever the locale. */
    public static Terminal ofProcess() {
        return new Terminal(stream(FileDescriptor.out), stream(FileDescriptor.err), Path.of("").toAbsolutePath());
    }

    /**
     * The absolute path of a file named on the command line.
     *
     * @throws CommandException if the name can be no file's
     */
    public Path file(String name) throws CommandException {
        try {
            return folder.resolve(name).normalize();
        } catch (InvalidPathException e) {
            throw CommandException.usage("no file can be called '" + name + "': " + e.getReason());
        }
    }

    /** Writes out what is still held back. */
    public void flush() {
        out.flush();
        err.flush();
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(descriptor), 8192), false, StandardCharsets.UTF_8);
    }
}
