package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.Optional;

import culm.model.studio.Link;

/** Where a linked part stands. */
record PartPlace(Path file, String id) {
    /** The place a link leads to; empty when it is no address. */
    static Optional<PartPlace> of(String link, Path from) {
        try {
            Link parsed = Link.parse(link);
            return Optional.of(new PartPlace(parsed.from(from), parsed.id()));
        } catch (Link.BadLinkException e) {
            return Optional.empty(); // the design says so itself
        }
    }
}
