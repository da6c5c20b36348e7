package culm.model.studio;

import culm.model.text.Ids;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * The address of a part in a parts file, relative to the file the link stands in, such as {@code class.parts#staple-47}.
 *
 * @param file the relative address of the parts file, with {@code /} between folders
 * @param id the part's id
 */
public record Link(String file, String id) {
    private static final Pattern SCHEME = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*", Pattern.DOTALL);
    private static final Pattern CONTROL = Pattern.compile(".*\\p{Cntrl}.*", Pattern.DOTALL);

    /** A text that is no such address; the message is the second half of a sentence that begins with the text. */
    public static final class BadLinkException extends Exception {
        private static final long serialVersionUID = 1L;

        BadLinkException(String message) {
            super(message);
        }
    }

    /**
     * Reads an address.
     *
     * @param text the text
     * @return the address
     * @throws BadLinkException when it is not relative or has no id
     */
    public static Link parse(String text) throws BadLinkException {
        int hash = text.lastIndexOf('#');
        if (hash <= 0 || !Ids.isId(text.substring(hash + 1))) {
            throw new BadLinkException("is not the address of a part, such as class.parts#staple-47");
        }
        String file = text.substring(0, hash);
        if (file.indexOf('\\') >= 0) {
            throw new BadLinkException("has a backslash; folders are separated by /");
        }
        if (file.startsWith("/") || SCHEME.matcher(file).matches()) {
            throw new BadLinkException("is not a relative address; links stay inside the studio");
        }
        if (CONTROL.matcher(file).matches()) {
            throw new BadLinkException("has characters that no file name has");
        }
        return new Link(file, text.substring(hash + 1));
    }

    /**
     * The address of a part, seen from a file.
     *
     * @param from the file the link will stand in
     * @param target the parts file
     * @param id the part's id
     * @return the address
     * @throws IllegalArgumentException when there is no relative way from one to the other
     */
    public static Link between(Path from, Path target, String id) {
        Path folder = from.toAbsolutePath().normalize().getParent();
        Path way = folder.relativize(target.toAbsolutePath().normalize());
        return new Link(way.toString().replace(way.getFileSystem().getSeparator(), "/"), id);
    }

    /**
     * Where the parts file is.
     *
     * @param from the file the link stands in
     * @return the normalized path of the parts file
     * @throws BadLinkException when no file can have this name here
     */
    public Path from(Path from) throws BadLinkException {
        try {
            return from.toAbsolutePath().normalize().resolveSibling(file).normalize();
        } catch (InvalidPathException e) {
            throw new BadLinkException("has characters that no file name has");
        }
    }

    @Override
    public String toString() {
        return file + "#" + id;
    }
}
