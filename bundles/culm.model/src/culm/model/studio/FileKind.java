package culm.model.studio;

import culm.model.Batch;
import culm.model.Design;
import culm.model.Document;
import culm.model.Limits;
import culm.model.PartsFile;
import culm.model.ReedLog;
import culm.model.files.SafeFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The sorts of files a studio has, told by their names. */
public enum FileKind {
    /** One blank, {@code .reed}. */
    DESIGN(".reed", Design.class),
    /** Staples, gouges, shapes and threads, {@code .parts}. */
    PARTS(".parts", PartsFile.class),
    /** Measured staples, {@code .batch}. */
    BATCH(".batch", Batch.class),
    /** Blanks as they were tied, {@code .log}. */
    LOG(".log", ReedLog.class),
    /** The studio's limits; the file's name is {@code studio.limits}. */
    LIMITS(".limits", Limits.class);

    private final String ending;
    private final Class<? extends Document> type;

    FileKind(String ending, Class<? extends Document> type) {
        this.ending = ending;
        this.type = type;
    }

    /** {@return what the file's name ends in, with its point} */
    public String ending() {
        return ending;
    }

    /** {@return what such a file holds} */
    public Class<? extends Document> type() {
        return type;
    }

    /**
     * The sort of a file.
     *
     * @param file any path
     * @return its sort by its name, or empty when it belongs to no studio
     */
    public static Optional<FileKind> of(Path file) {
        Path last = file.getFileName();
        if (last == null || last.toString().startsWith(".") || SafeFile.isAside(last.toString())) {
            return Optional.empty();
        }
        String name = last.toString().toLowerCase(Locale.ROOT);
        for (FileKind kind : values()) {
            if (name.endsWith(kind.ending)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
