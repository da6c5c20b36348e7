package culm.model.studio;

import culm.model.problem.FileProblem;
import culm.model.studio.StudioEntry.PartEntry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was in a studio at one moment. Immutable. */
public final class StudioIndex {
    /**
     * A design that uses a part.
     *
     * @param design the design
     * @param part the linked part in it
     */
    public record Use(StudioEntry design, PartEntry part) {
    }

    /**
     * A part in a parts file.
     *
     * @param file the parts file
     * @param part the part
     */
    public record Held(StudioEntry file, PartEntry part) {
    }

    private record Address(Path file, String id) {
    }

    private final List<StudioEntry> entries;
    private final Map<Address, List<Use>> uses = new HashMap<>();

    StudioIndex(List<StudioEntry> entries) {
        this.entries = List.copyOf(entries);
        for (StudioEntry entry : entries) {
            if (entry.kind() == FileKind.DESIGN) {
                entry.parts().forEach(part -> note(entry, part));
            }
        }
    }

    private void note(StudioEntry design, PartEntry part) {
        if (part.link().isEmpty()) {
            return;
        }
        try {
            Link link = Link.parse(part.link());
            uses.computeIfAbsent(new Address(link.from(design.file()), link.id()), key -> new ArrayList<>())
                    .add(new Use(design, part));
        } catch (Link.BadLinkException e) {
            // A link that is no address uses nothing; whoever opens the design is told.
            return;
        }
    }

    /** {@return all files, by their names} */
    public List<StudioEntry> entries() {
        return entries;
    }

    /**
     * The files of one sort.
     *
     * @param kind the sort
     * @return the files, by their names
     */
    public List<StudioEntry> of(FileKind kind) {
        return entries.stream().filter(entry -> entry.kind() == kind).toList();
    }

    /** {@return why files could not be read} */
    public List<FileProblem> problems() {
        return entries.stream().flatMap(entry -> entry.problem().stream()).toList();
    }

    /** {@return every part of every parts file} */
    public List<Held> parts() {
        List<Held> all = new ArrayList<>();
        for (StudioEntry entry : of(FileKind.PARTS)) {
            entry.parts().forEach(part -> all.add(new Held(entry, part)));
        }
        return all;
    }

    /**
     * The designs made with a part of a parts file.
     *
     * @param partsFile the parts file
     * @param id the part's id
     * @return each use
     */
    public List<Use> usersOf(Path partsFile, String id) {
        return List.copyOf(uses.getOrDefault(new Address(partsFile.toAbsolutePath().normalize(), id), List.of()));
    }

    /**
     * Finds files by a piece of their name, whatever its case.
     *
     * @param piece a piece of the document's name, id or the file's name
     * @return the files, by their names
     */
    public List<StudioEntry> find(String piece) {
        String wanted = piece.strip().toLowerCase(Locale.ROOT);
        return entries.stream().filter(entry -> has(entry.name(), wanted) || has(entry.id(), wanted)
                || has(entry.shown(), wanted)).toList();
    }

    /**
     * Finds parts by a piece of their name, whatever its case.
     *
     * @param piece a piece of the part's name or id
     * @return the parts, in the order of their files
     */
    public List<Held> findParts(String piece) {
        String wanted = piece.strip().toLowerCase(Locale.ROOT);
        return parts().stream().filter(held -> has(held.part().name(), wanted) || has(held.part().id(), wanted)).toList();
    }

    private static boolean has(String text, String piece) {
        return text.toLowerCase(Locale.ROOT).contains(piece);
    }
}
