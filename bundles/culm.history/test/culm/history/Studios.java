package culm.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the example studio. */
final class Studios {
    private Studios() {
    }

    static void copy(Path into) throws IOException {
        Path examples = Files.isDirectory(Path.of("../../examples/studio")) ? Path.of("../../examples/studio") : Path.of("examples/studio");
        try (Stream<Path> all = Files.list(examples)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, into.resolve(file.getFileName()));
            }
        }
    }

    static void replace(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        if (!text.contains(from)) {
            throw new IllegalStateException(from + " is not in " + file);
        }
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(from), to));
    }
}
