package culm.workbench.internal.studio;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import culm.model.Design;
import culm.model.Document;
import culm.model.Part;
import culm.model.Setup;
import culm.model.files.FileText;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Link;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.model.text.Ids;
import culm.workbench.internal.sharing.Aside;

/** Plans what is done with the files of a studio. */
public final class StudioFiles {
    private final Path root;
    private final ModelFiles files;

    /**
     * Plans for a studio.
     *
     * @param root its folder
     * @param files reads and writes files
     */
    public StudioFiles(Path root, ModelFiles files) {
        this.root = root;
        this.files = files;
    }

    /** A file of a name that is free yet. */
    Path free(String name, FileKind kind) {
        String stem = Ids.of(name, kind.ending().substring(1), List.of());
        Path file = root.resolve(stem + kind.ending());
        for (int i = 2; Files.exists(file); i++) {
            file = root.resolve(stem + "-" + i + kind.ending());
        }
        return file;
    }

    /** A new document in a new file. */
    FileStep create(Document document, Path file) {
        return new FileStep("new " + file.getFileName()).put(file, files.bytes(document));
    }

    /** A copy under another name. */
    FileStep copy(StudioEntry entry, String name, Path target) throws FileProblemException {
        Document document = load(entry);
        document.setName(name);
        document.setId(Ids.of(name, "copy", List.of()));
        return new FileStep("copy of " + entry.title()).put(target, files.bytes(document));
    }

    /** Another name for a document, and a file called after it; links to it follow. */
    FileStep rename(StudioIndex index, StudioEntry entry, String name) throws FileProblemException {
        Document document = load(entry);
        document.setName(name);
        String stem = Ids.of(name, entry.kind().ending().substring(1), List.of());
        Path same = entry.file().resolveSibling(stem + entry.kind().ending());
        Path target = same.equals(entry.file()) ? same : free(name, entry.kind());
        FileStep step = new FileStep("rename " + entry.title());
        if (target.equals(entry.file())) {
            return step.put(target, files.bytes(document));
        }
        step.move(entry.file(), target, files.bytes(document));
        if (entry.kind() == FileKind.PARTS) {
            for (StudioEntry user : users(index, entry)) {
                step.put(user.file(), relinked(user, entry.file(), target));
            }
        }
        return step;
    }

    /** Into the folder of removed files. */
    FileStep remove(StudioEntry entry) throws FileProblemException {
        Path target = Aside.of(root, entry.file());
        return new FileStep("remove " + entry.title()).put(target, FileText.bytes(entry.file(), entry.shown())).delete(entry.file());
    }

    /** The designs that link to a parts file. */
    static Set<StudioEntry> users(StudioIndex index, StudioEntry parts) {
        Set<StudioEntry> users = new HashSet<>();
        parts.parts().forEach(part -> index.usersOf(parts.file(), part.id()).forEach(use -> users.add(use.design())));
        return users;
    }

    private byte[] relinked(StudioEntry user, Path from, Path to) throws FileProblemException {
        Design design = (Design) load(user);
        relink(design, user.file(), from, to);
        if (design.getFit() != null && design.getFit().getWorked() != null) {
            relink(design.getFit().getWorked(), user.file(), from, to);
        }
        design.getVariants().forEach(variant -> relink(variant, user.file(), from, to));
        return files.bytes(design);
    }

    private static void relink(Setup setup, Path file, Path from, Path to) {
        for (Part part : new Part[] { setup.getStaple(), setup.getGouge(), setup.getShape(), setup.getThread() }) {
            if (part == null || part.getLink() == null) {
                continue;
            }
            try {
                Link link = Link.parse(part.getLink());
                if (link.from(file).equals(from)) {
                    part.setLink(Link.between(file, to, link.id()).toString());
                }
            } catch (Link.BadLinkException e) {
                continue; // it led nowhere before either
            }
        }
    }

    private Document load(StudioEntry entry) throws FileProblemException {
        return files.load(entry.file(), entry.shown(), entry.kind().type()).document();
    }
}
