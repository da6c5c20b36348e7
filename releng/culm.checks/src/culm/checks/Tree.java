package culm.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The project's files. */
final class Tree {

    /** The project's folder. */
    static final Path ROOT = Path.of(System.getProperty("culm.root")).toAbsolutePath().normalize();

    private static final Set<String> MADE = Set.of("target", "src-gen", "bin", ".git", ".build");

    private Tree() {
    }

    /** The folders of all bundles, tests too. */
    static List<Path> bundles() throws IOException {
        try (Stream<Path> folders = Files.list(ROOT.resolve("bundles"))) {
            return folders.filter(each -> Files.exists(each.resolve("META-INF/MANIFEST.MF"))).sorted().toList();
        }
    }

    /** All files written by hand: what a build makes is left out. */
    static List<Path> written() throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(ROOT, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return MADE.contains(String.valueOf(folder.getFileName())) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                // Maven leaves the poms that it works with beside those of the project, under hidden names.
                if (!file.getFileName().toString().endsWith("-pom.xml")) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return found;
    }

    /** The lines of a text file; a file that is no text in UTF-8 has none. */
    static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (CharacterCodingException e) {
            return List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
