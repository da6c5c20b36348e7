package culm.design.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

import org.eclipse.emf.ecore.EStructuralFeature;

import culm.blank.Assessment;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.model.Design;
import culm.model.Part;
import culm.model.files.Loaded;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex;

/** One part of a studio's files replaced by another of its kind in the designs that use it: first shown, then done. */
public final class Replacement {
    private final Studio studio;
    private final Bridge bridge;
    private final Rules rules;
    private final PartAddress from;
    private final PartAddress to;

    /** @param from the part that is used now; @param to the one to use instead */
    public Replacement(Studio studio, Bridge bridge, Rules rules, PartAddress from, PartAddress to) {
        this.studio = studio;
        this.bridge = bridge;
        this.rules = rules;
        this.from = from;
        this.to = to;
    }

    /**
     * What becomes of one design.
     *
     * @param design its file
     * @param name   what it is called
     * @param before its verdict now; empty when it cannot be computed
     * @param after  its verdict with the other part; empty when it cannot be computed
     * @param reason why a verdict is missing; empty when none is
     */
    public record Preview(Path design, String name, Optional<Verdict> before, Optional<Verdict> after, String reason) {
    }

    /** Each design that uses the part, with its verdict before and after; nothing is written. @throws FileProblemException when there is no such part, or the other is of another kind */
    public List<Preview> preview(StudioIndex index) throws FileProblemException {
        requireSameKind(index);
        List<Preview> all = new ArrayList<>();
        for (Path design : designs(index)) {
            all.add(preview(design));
        }
        return all;
    }

    /** What becomes of one design; nothing is written. */
    public Preview preview(Path file) {
        String shown = studio.shown(file);
        try {
            Design design = studio.files().load(file, shown, Design.class).document();
            DesignedBlank before = bridge.of(design, file, shown, studio);
            Optional<Verdict> now = Optional.of(verdict(before));
            try {
                edit(design, file);
                return new Preview(file, before.name(), now, Optional.of(verdict(bridge.of(design, file, shown, studio))), "");
            } catch (FileProblemException e) {
                return new Preview(file, before.name(), now, Optional.empty(), e.problem().message());
            }
        } catch (FileProblemException e) {
            return new Preview(file, shown, Optional.empty(), Optional.empty(), e.problem().message());
        }
    }

    private Verdict verdict(DesignedBlank designed) {
        Assessment assessment = designed.assess();
        List<Finding> findings = designed.judge(assessment, rules);
        return Verdict.of(assessment, findings);
    }

    /**
     * Does it in one design's file; everything else in it stays as it is.
     *
     * @throws FileProblemException when it cannot be read or written, or was changed meanwhile
     */
    public void apply(Path file) throws FileProblemException {
        Loaded<Design> loaded = studio.files().load(file, studio.shown(file), Design.class);
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        edit(loaded.document(), file);
        studio.files().save(loaded.document(), file, Optional.of(loaded.stamp()));
    }

    /**
     * What a design's file holds with the other part; nothing is written.
     *
     * @throws FileProblemException when it cannot be read, or only looked at
     */
    public byte[] content(Path file) throws FileProblemException {
        Loaded<Design> loaded = studio.files().load(file, studio.shown(file), Design.class);
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        edit(loaded.document(), file);
        return studio.files().bytes(loaded.document());
    }

    private void edit(Design design, Path file) throws FileProblemException {
        Edits edits = Edits.of(design, PartResolver.in(studio, file, studio.shown(file)), RandomGenerator.getDefault());
        for (String kind : List.of("staple", "gouge", "shape", "thread")) {
            EStructuralFeature feature = design.eClass().getEStructuralFeature(kind);
            if (design.eGet(feature) instanceof Part part && isTheOne(part, file)) {
                edits.link(kind, to.from(file)).execute();
            }
        }
    }

    private boolean isTheOne(Part part, Path file) {
        try {
            return part.getLink() != null && PartAddress.of(Link.parse(part.getLink()), file).equals(from);
        } catch (Link.BadLinkException e) {
            return false; // a link that leads nowhere is told when the design is opened
        }
    }

    /** The designs that use the part. @throws FileProblemException when there is no such part, or the other is of another kind */
    public List<Path> users(StudioIndex index) throws FileProblemException {
        requireSameKind(index);
        return designs(index);
    }

    private List<Path> designs(StudioIndex index) {
        return index.usersOf(from.file(), from.id()).stream().map(use -> use.design().file()).distinct().toList();
    }

    private void requireSameKind(StudioIndex index) throws FileProblemException {
        String one = kind(index, from);
        String other = kind(index, to);
        if (!one.equals(other)) {
            throw new FileProblemException(new FileProblem(Kind.LINK_WRONG_KIND, studio.shown(to.file()), 0, to.id(),
                    "\"" + to.id() + "\" is a " + other + " and cannot take the place of a " + one));
        }
    }

    private String kind(StudioIndex index, PartAddress address) throws FileProblemException {
        return index.parts().stream().filter(held -> held.file().file().equals(address.file()) && held.part().id().equals(address.id())).findFirst()
                .map(held -> held.part().kind()).orElseThrow(() -> new FileProblemException(new FileProblem(Kind.LINK_PART_MISSING, studio.shown(address.file()), 0,
                        address.id(), "there is no part \"" + address.id() + "\" in it")));
    }
}
