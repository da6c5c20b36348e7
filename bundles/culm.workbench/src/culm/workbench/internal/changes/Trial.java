package culm.workbench.internal.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.design.DesignedBlank;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.model.Design;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/** Changes that are only tried: on a copy of the design, until someone uses them. */
final class Trial {
    private static final long SEED = 1;
    private final Workshop workshop;
    private final DesignSession session;
    private final java.util.Map<String, DesignSession.Change> changes = new java.util.LinkedHashMap<>();

    Trial(Workshop workshop, DesignSession session) {
        this.workshop = workshop;
        this.session = session;
    }

    /** Tries something; null stops trying it. @param what the thing that is changed, such as {@code staple} or an input's path */
    void set(String what, DesignSession.Change change) {
        if (change == null) {
            changes.remove(what);
        } else {
            changes.put(what, change);
        }
    }

    void clear() {
        changes.clear();
    }

    boolean isEmpty() {
        return changes.isEmpty();
    }

    /** The design as it would be. @return empty when nothing is tried */
    Optional<DesignedBlank> blank() throws FileProblemException {
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        Design copy = EcoreUtil.copy(session.design());
        String shown = session.studio().shown(session.file());
        Edits edits = Edits.of(copy, PartResolver.in(session.studio(), session.file(), shown), new SplittableRandom(SEED));
        for (DesignSession.Change change : changes.values()) {
            change.with(edits).execute();
        }
        return Optional.of(workshop.bridge().draft(copy, session.file(), shown, session.studio()));
    }

    /** Makes what is tried real, as one command. */
    void use() throws FileProblemException {
        List<DesignSession.Change> all = new ArrayList<>(changes.values());
        changes.clear();
        session.changeAll(all, "what was tried");
    }
}
