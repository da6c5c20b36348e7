package culm.workbench.internal.studio;

import java.util.List;

import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioEntry.PartEntry;

/** What stands in the studio's tree. */
public sealed interface Node {
    /** What stands before the design that uses a part. */
    String USED_BY = "used by ";

    /** {@return its words} */
    String words();

    /** {@return what it is told by when the studio was read again: its names may be others then} */
    Object key();

    /** All files of a kind. */
    record Group(FileKind kind, String words) implements Node {
        @Override
        public Object key() {
            return kind;
        }
    }

    /** One file. */
    record Entry(StudioEntry entry) implements Node {
        @Override
        public String words() {
            return entry.title();
        }

        @Override
        public Object key() {
            return entry.file();
        }
    }

    /** One part of a parts file. */
    record Held(StudioEntry file, PartEntry part) implements Node {
        @Override
        public String words() {
            return part.title();
        }

        @Override
        public Object key() {
            return List.of(file.file(), part.id().isEmpty() ? part.title() : part.id());
        }
    }

    /** A design that uses a part. */
    record Use(Held part, StudioEntry design) implements Node {
        @Override
        public String words() {
            return USED_BY + design.title();
        }

        @Override
        public Object key() {
            return List.of(part.key(), design.file());
        }
    }
}
