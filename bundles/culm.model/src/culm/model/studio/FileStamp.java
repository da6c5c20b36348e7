package culm.model.studio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/** Tells cheaply whether a file may have changed: its size and the time it was last written. */
record FileStamp(long size, FileTime written) {
    static FileStamp of(Path file) throws IOException {
        return of(Files.readAttributes(file, BasicFileAttributes.class));
    }

    static FileStamp of(BasicFileAttributes attributes) {
        return new FileStamp(attributes.size(), attributes.lastModifiedTime());
    }
}
