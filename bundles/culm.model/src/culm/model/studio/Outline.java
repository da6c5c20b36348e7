package culm.model.studio;

import culm.model.files.FileText;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.StudioEntry.PartEntry;
import culm.model.xml.XmlNode;
import culm.model.xml.XmlParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads from a file only what a list of files shows: names, ids and links. Makes no objects of the model. */
final class Outline {
    private static final Set<String> PARTS = Set.of("staple", "gouge", "shape", "thread");

    StudioEntry of(Path file, String shown, FileKind kind) {
        try {
            XmlNode root = XmlParser.parse(shown, FileText.text(FileText.bytes(file, shown), shown)).root();
            List<PartEntry> parts = new ArrayList<>();
            if (kind == FileKind.DESIGN || kind == FileKind.PARTS) {
                root.children().stream().filter(node -> PARTS.contains(node.name())).forEach(node -> parts.add(part(node)));
            }
            return new StudioEntry(file, shown, kind, attribute(root, "id"), name(root), List.copyOf(parts),
                    Optional.empty());
        } catch (FileProblemException e) {
            return broken(file, shown, kind, e.problem());
        }
    }

    private static StudioEntry broken(Path file, String shown, FileKind kind, FileProblem problem) {
        return new StudioEntry(file, shown, kind, "", "", List.of(), Optional.of(problem));
    }

    private static PartEntry part(XmlNode node) {
        return new PartEntry(node.name(), attribute(node, "id"), name(node), attribute(node, "link"), node.line());
    }

    private static String attribute(XmlNode node, String name) {
        String value = node.attribute(name);
        return value == null ? "" : value;
    }

    private static String name(XmlNode node) {
        return node.children().stream().filter(child -> child.name().equals("name")).map(XmlNode::text).findFirst()
                .orElse("");
    }
}
