package culm.history;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import culm.design.compare.Difference;
import culm.design.compare.ThreeWay;
import culm.geometry.profile.Profiles;
import culm.model.Document;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;

/** Reads contents of a studio's files from any version. */
final class Documents {
    private final ModelFiles files;
    private final Profiles profiles;

    Documents(ModelFiles files, Profiles profiles) {
        this.files = files;
        this.profiles = profiles;
    }

    /** The document in a content; empty for a file of another kind, and for one that cannot be read or saved without loss. */
    Optional<Document> read(String file, byte[] content) {
        Optional<FileKind> kind = content == null ? Optional.empty() : FileKind.of(Path.of(file));
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        try {
            Loaded<? extends Document> loaded = files.read(content, file, kind.get().type());
            return loaded.readOnly().isEmpty() ? Optional.of(loaded.document()) : Optional.empty();
        } catch (FileProblemException e) {
            return Optional.empty(); // it is then compared as a whole
        }
    }

    /** One file's change from one content to another; null stands for no file. */
    FileChange change(String file, byte[] before, byte[] now) {
        Optional<Document> old = read(file, before);
        Optional<Document> today = read(file, now);
        FileChange.Kind kind = before == null ? FileChange.Kind.ADDED : now == null ? FileChange.Kind.REMOVED : FileChange.Kind.CHANGED;
        List<Difference> differences = old.isPresent() && today.isPresent() ? ThreeWay.changes(old.get(), today.get(), profiles) : List.of();
        return new FileChange(file, kind, Objects.requireNonNullElse(today.or(() -> old).map(Document::getName).orElse(""), ""), differences);
    }

    /** Three contents of one file, none of them null but {@code before}; empty when they cannot be compared value by value. */
    Optional<ThreeWay> compare(String file, byte[] before, byte[] yours, byte[] theirs) {
        Optional<Document> old = read(file, before);
        Optional<Document> mine = read(file, yours);
        Optional<Document> others = read(file, theirs);
        boolean comparable = mine.isPresent() && others.isPresent() && (before == null || old.isPresent());
        return comparable ? Optional.of(ThreeWay.compare(old.orElse(null), mine.get(), others.get(), profiles)) : Optional.empty();
    }

    byte[] bytes(Document document) {
        return files.bytes(document);
    }
}
