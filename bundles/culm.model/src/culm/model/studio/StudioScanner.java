package culm.model.studio;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.text.NaturalOrder;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Walks through a studio's folder; folders that begin with a point are left out, links of the file system not followed. */
final class StudioScanner {
    private record Seen(FileStamp stamp, StudioEntry entry) {
    }

    private final Path root;
    private final Outline outline = new Outline();
    private Map<Path, Seen> seen = new HashMap<>();

    StudioScanner(Path root) {
        this.root = root;
    }

    synchronized StudioIndex scan() {
        Map<Path, Seen> now = new HashMap<>();
        List<StudioEntry> entries = new ArrayList<>();
        try {
            Files.walkFileTree(root, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                    boolean hidden = !folder.equals(root) && folder.getFileName().toString().startsWith(".");
                    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    Optional<FileKind> kind = FileKind.of(file);
                    if (kind.isPresent() && attributes.isRegularFile()) {
                        entries.add(entry(file, kind.get(), FileStamp.of(attributes), now));
                    }
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    entries.add(unreadable(file));
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            entries.add(unreadable(root));
        }
        seen = now;
        entries.sort(Comparator.comparing(StudioEntry::shown, NaturalOrder.INSTANCE));
        return new StudioIndex(entries);
    }

    private StudioEntry entry(Path file, FileKind kind, FileStamp stamp, Map<Path, Seen> now) {
        Seen known = seen.get(file);
        StudioEntry entry = known != null && known.stamp().equals(stamp) ? known.entry()
                : outline.of(file, shown(file), kind);
        now.put(file, new Seen(stamp, entry));
        return entry;
    }

    private StudioEntry unreadable(Path file) {
        String shown = shown(file);
        return new StudioEntry(file, shown, FileKind.of(file).orElse(FileKind.DESIGN), "", "", List.of(), Optional
                .of(new FileProblem(Kind.NOT_ACCESSIBLE, shown, 0, "", "it cannot be read")));
    }

    private String shown(Path file) {
        return root.relativize(file).toString().replace(root.getFileSystem().getSeparator(), "/");
    }
}
