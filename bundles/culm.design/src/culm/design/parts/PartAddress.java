package culm.design.parts;

import java.nio.file.Path;

import culm.model.studio.Link;

/**
 * A part in a parts file.
 *
 * @param file the parts file, absolute
 * @param id   the part's id
 */
public record PartAddress(Path file, String id) {
    /** The address that a link in a file leads to. @throws Link.BadLinkException when it leads nowhere */
    public static PartAddress of(Link link, Path from) throws Link.BadLinkException {
        return new PartAddress(link.from(from), link.id());
    }

    /** The link to it that stands in a file. */
    public Link from(Path design) {
        return Link.between(design, file, id);
    }
}
