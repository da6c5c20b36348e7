package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.Blank;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.explore.Axis;
import culm.model.Design;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/** The parts of the studio as values of an axis. Used on the display's thread. */
final class StudioParts {
    private static final long SEED = 1;

    /** A part by the name that is shown, and where it is. */
    record Named(String name, Link link) {
    }

    private final Workshop workshop;
    private final DesignSession session;

    StudioParts(Workshop workshop, DesignSession session) {
        this.workshop = workshop;
        this.session = session;
    }

    /** The parts of a kind. @param kind staple, gouge, shape or thread */
    List<Named> of(String kind) {
        List<Named> found = new ArrayList<>();
        workshop.studio().index().ifPresent(index -> index.parts().stream().filter(h -> h.part().kind().equals(kind)).forEach(h -> found.add(
                new Named(h.part().title(), Link.between(session.file(), h.file().file(), h.part().id())))));
        return found;
    }

    /** An axis of parts. @throws FileProblemException when one cannot be read */
    Axis.Parts axis(Offer.Parts offer, List<Named> chosen) throws FileProblemException {
        List<Axis.Choice> choices = new ArrayList<>();
        for (Named part : chosen) {
            choices.add(Axis.Choice.of(part.name(), offer.id(), with(offer.id(), part.link())));
        }
        return new Axis.Parts(offer.id(), offer.id(), choices);
    }

    private Blank with(String kind, Link link) throws FileProblemException {
        Design copy = EcoreUtil.copy(session.design());
        String shown = session.studio().shown(session.file());
        Edits.of(copy, PartResolver.in(session.studio(), session.file(), shown), new SplittableRandom(SEED)).link(kind, link).execute();
        return workshop.bridge().draft(copy, session.file(), shown, session.studio()).blank();
    }
}
