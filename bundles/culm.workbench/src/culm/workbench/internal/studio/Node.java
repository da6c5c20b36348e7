package culm.workbench.internal.studio;

import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioEntry.PartEntry;

/** What stands in the studio's tree. */
public sealed interface Node {
    /** What stands before the design that uses a part. */
    String USED_BY = "used by ";

    /** {@return its words} */
    String words();

    /** All files of a kind. */
    record Group(FileKind kind, String words) implements Node {
    }

    /** One file. */
    record Entry(StudioEntry entry) implements Node {
        @Override
        public String words() {
            return entry.title();
        }
    }

    /** One part of a parts file. */
    record Held(StudioEntry file, PartEntry part) implements Node {
        @Override
        public String words() {
            return part.title();
        }
    }

    /** A design that uses a part. */
    record Use(Held part, StudioEntry design) implements Node {
        @Override
        public String words() {
            return USED_BY + design.title();
        }
    }
}
