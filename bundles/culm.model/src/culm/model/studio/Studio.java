package culm.model.studio;

import culm.model.Limits;
import culm.model.Part;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.text.Located;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A studio's folder: finds linked parts, the studio's limits, and everything in it. No link leads out of it. Several
 * threads may use one; what was read is kept until the file changes.
 */
public final class Studio {
    /** The file that marks a studio's folder and holds its limits. */
    public static final String LIMITS_FILE = "studio.limits";

    private final Path root;
    private final ModelFiles files;
    private final PartsCache cache;
    private final StudioScanner scanner;

    private Studio(Path root, ModelFiles files) {
        this.root = root.toAbsolutePath().normalize();
        this.files = files;
        this.cache = new PartsCache(files);
        this.scanner = new StudioScanner(this.root);
    }

    /**
     * The studio in a folder.
     *
     * @param folder the folder
     * @param files reads its files
     * @return the studio
     */
    public static Studio at(Path folder, ModelFiles files) {
        return new Studio(folder, files);
    }

    /**
     * The studio a file belongs to: the nearest folder above it with a {@value #LIMITS_FILE}, otherwise the file's own
     * folder.
     *
     * @param file a file; it need not exist
     * @param files reads the studio's files
     * @return the studio
     */
    public static Studio around(Path file, ModelFiles files) {
        Path own = file.toAbsolutePath().normalize().getParent();
        for (Path folder = own; folder != null; folder = folder.getParent()) {
            if (Files.isRegularFile(folder.resolve(LIMITS_FILE))) {
                return new Studio(folder, files);
            }
        }
        return new Studio(own, files);
    }

    /** {@return the folder, absolute} */
    public Path root() {
        return root;
    }

    /** {@return what reads and writes this studio's files} */
    public ModelFiles files() {
        return files;
    }

    /**
     * A file's name as it is shown: relative to the studio, with {@code /}.
     *
     * @param file a file
     * @return its name; its whole path when it is outside
     */
    public String shown(Path file) {
        Path path = file.toAbsolutePath().normalize();
        return path.startsWith(root) ? root.relativize(path).toString().replace(root.getFileSystem().getSeparator(), "/")
                : path.toString();
    }

    /**
     * The studio's limits.
     *
     * @return what its file holds, or empty when there is none
     * @throws FileProblemException when the file cannot be used
     */
    public Optional<Loaded<Limits>> limits() throws FileProblemException {
        Path file = root.resolve(LIMITS_FILE);
        return Files.exists(file) ? Optional.of(files.load(file, LIMITS_FILE, Limits.class)) : Optional.empty();
    }

    /**
     * Everything in the studio now. Only files that changed since the last time are read again.
     *
     * @return what is in it, and what could not be read
     */
    public StudioIndex index() {
        return scanner.scan();
    }

    /**
     * The part that a part in a design stands for: itself, or the one its link leads to.
     *
     * @param from the design's file
     * @param shown the design's name for messages
     * @param part the part in the design
     * @param <P> the sort of part
     * @return the part to use
     * @throws FileProblemException when the link leads nowhere, out of the studio, or to something else
     */
    public <P extends Part> ResolvedPart<P> resolve(Path from, String shown, P part) throws FileProblemException {
        if (part.getLink() == null) {
            return new ResolvedPart<>(part, from, shown, false);
        }
        Source source = new Source(shown, Located.lineOf(part), part.getLink());
        Link link;
        Path target;
        try {
            link = Link.parse(part.getLink());
            target = link.from(from);
        } catch (Link.BadLinkException e) {
            throw source.problem(Kind.BAD_LINK, e.getMessage());
        }
        requireInside(target, source);
        Part found = cache.parts(target, shown(target)).get(link.id());
        if (found == null) {
            throw source.problem(Kind.LINK_PART_MISSING, "leads to " + shown(target) + ", which has no part \"" + link.id() + "\"");
        }
        if (found.eClass() != part.eClass()) {
            throw source.problem(Kind.LINK_WRONG_KIND, "leads to a part of another kind than is needed here");
        }
        if (found.getLink() != null) {
            throw source.problem(Kind.BAD_LINK, "leads to a part that is itself only a link");
        }
        @SuppressWarnings("unchecked")
        P same = (P) found;
        return new ResolvedPart<>(same, target, shown(target), true);
    }

    private void requireInside(Path target, Source source) throws FileProblemException {
        if (!target.startsWith(root)) {
            throw source.problem(Kind.BAD_LINK, "leads out of the studio, which is the folder with " + LIMITS_FILE
                    + ", or without one the design's own folder");
        }
        if (!Files.isRegularFile(target)) {
            throw source.problem(Kind.LINK_FILE_MISSING, "leads to the file " + shown(target) + ", which is not there");
        }
        try {
            if (!target.toRealPath().startsWith(root.toRealPath())) {
                throw source.problem(Kind.BAD_LINK, "leads out of the studio");
            }
        } catch (IOException e) {
            throw source.problem(Kind.LINK_FILE_MISSING, "leads to a file that cannot be reached");
        }
    }

    private record Source(String file, int line, String link) {
        FileProblemException problem(Kind kind, String secondHalf) {
            return new FileProblemException(new FileProblem(kind, file, line, link,
                    "the link \"" + FileProblem.shorten(link) + "\" " + secondHalf));
        }
    }
}
