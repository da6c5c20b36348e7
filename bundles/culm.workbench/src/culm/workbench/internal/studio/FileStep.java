package culm.workbench.internal.studio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import culm.model.files.SafeFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;

/**
 * Something done with files: what each held before (nothing when it was not there) and holds after. It is taken back only
 * as long as the files still hold what it left there.
 */
public final class FileStep {
    private final String label;
    private final Map<Path, Optional<byte[]>> before = new LinkedHashMap<>();
    private final Map<Path, Optional<byte[]>> after = new LinkedHashMap<>();
    private Optional<Move> move = Optional.empty();
    private Optional<Path> about = Optional.empty();

    /** A file that goes on under another path. */
    record Move(Path from, Path to) {
    }

    /**
     * Nothing planned yet.
     *
     * @param label what it is called after the words "undo" and "redo"
     */
    public FileStep(String label) {
        this.label = label;
    }

    /** Plans what a file shall hold. */
    public FileStep put(Path file, byte[] content) {
        after.put(file, Optional.of(content.clone()));
        return this;
    }

    /** Plans that a file is no longer there. */
    FileStep delete(Path file) {
        after.put(file, Optional.empty());
        return this;
    }

    /** Plans that a file goes on under another path. */
    FileStep move(Path from, Path to, byte[] content) {
        move = Optional.of(new Move(from, to));
        return delete(from).put(to, content);
    }

    /**
     * Says from which file's editor it is done: there it is taken back, too.
     *
     * @param file that file; it need not be changed
     * @return this step
     */
    public FileStep about(Path file) {
        about = Optional.of(file);
        return this;
    }

    boolean isAbout(Path file) {
        return about.filter(file::equals).isPresent();
    }

    /** The files that are no longer there once it is done, or taken back. */
    List<Path> gone(boolean back) {
        Map<Path, Optional<byte[]>> then = back ? before : after;
        return then.keySet().stream().filter(f -> then.get(f).isEmpty()).toList();
    }

    /** The file that goes on under another path once it is done, or taken back. */
    Optional<Move> moved(boolean back) {
        return back ? move.map(m -> new Move(m.to(), m.from())) : move;
    }

    String label() {
        return label;
    }

    /** The file that is there once it is done, or taken back, and was not before; if there is one. */
    Optional<Path> come(boolean back) {
        Map<Path, Optional<byte[]>> then = back ? before : after;
        Map<Path, Optional<byte[]>> until = back ? after : before;
        return then.keySet().stream().filter(f -> then.get(f).isPresent() && until.get(f).isEmpty()).findFirst();
    }

    /** Does it for the first time. @throws FileProblemException when a file to be made is there already, or something cannot be written; then nothing is done */
    void run() throws FileProblemException {
        for (Path file : after.keySet()) {
            before.put(file, held(file));
        }
        apply(before, after);
    }

    void undo() throws FileProblemException {
        apply(after, before);
    }

    void redo() throws FileProblemException {
        apply(before, after);
    }

    private static void apply(Map<Path, Optional<byte[]>> from, Map<Path, Optional<byte[]>> to) throws FileProblemException {
        for (Map.Entry<Path, Optional<byte[]>> entry : from.entrySet()) {
            if (!same(held(entry.getKey()), entry.getValue())) {
                throw problem(entry.getKey(), "it has been changed since; nothing was done");
            }
        }
        for (Map.Entry<Path, Optional<byte[]>> entry : to.entrySet()) {
            write(entry.getKey(), entry.getValue());
        }
    }

    private static boolean same(Optional<byte[]> a, Optional<byte[]> b) {
        return a.isPresent() == b.isPresent() && (a.isEmpty() || Arrays.equals(a.get(), b.get()));
    }

    private static Optional<byte[]> held(Path file) throws FileProblemException {
        try {
            return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (IOException e) {
            throw problem(file, "it cannot be read");
        }
    }

    private static void write(Path file, Optional<byte[]> content) throws FileProblemException {
        try {
            if (content.isEmpty()) {
                Files.deleteIfExists(file);
            } else {
                Files.createDirectories(file.getParent());
                SafeFile.overwrite(file, content.get());
            }
        } catch (IOException e) {
            throw problem(file, "it cannot be written");
        }
    }

    private static FileProblemException problem(Path file, String sentence) {
        return new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, file.getFileName().toString(), 0, "", sentence));
    }
}
