package culm.workbench.internal.bench.log;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;

import culm.bench.learn.Learned;
import culm.bench.learn.LearnedFit;
import culm.bench.learn.Lesson;
import culm.design.DesignedBlank;
import culm.model.Design;
import culm.model.FitData;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.DesignChoice;
import culm.workbench.internal.editor.DesignSession;

/** Puts what was learned into a design, or takes it out again: in the design's own editor, as a step that can be taken back. */
final class LearnUse {
    private final Workshop workshop;
    private final IWorkbenchPage page;
    private final Path log;

    LearnUse(Workshop workshop, IWorkbenchPage page, Path log) {
        this.workshop = workshop;
        this.page = page;
        this.log = log;
    }

    /** The designs that a group's blanks were tied from. */
    List<Path> designs(Learned learned) {
        Set<Path> all = new TreeSet<>();
        for (Lesson lesson : learned.lessons()) {
            DesignChoice.file(log, lesson.tied().from().design()).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    /** The fit of a design as it stands, its changes that are not saved included; empty when none is in use. */
    Optional<FitData> inUse(Path design) {
        return fit(design).filter(FitData::isInUse);
    }

    private Optional<FitData> fit(Path design) {
        Optional<DesignSession> open = session(design);
        if (open.isPresent()) {
            return Optional.ofNullable(open.get().design().getFit());
        }
        try {
            Studio studio = Studio.around(design, workshop.files());
            return Optional.ofNullable(workshop.files().load(design, studio.shown(design), Design.class).document().getFit());
        } catch (FileProblemException e) {
            return Optional.empty(); // the log's problems say so
        }
    }

    private Optional<DesignSession> session(Path design) {
        return new Opening(page).editorOf(design).map(e -> e.getAdapter(DesignSession.class));
    }

    private DesignSession open(Path design) throws FileProblemException {
        Optional<IEditorPart> editor = new Opening(page).open(design);
        return editor.map(e -> e.getAdapter(DesignSession.class)).orElseThrow(() -> refused(design, "it cannot be opened"));
    }

    private static FileProblemException refused(Path design, String why) {
        return new FileProblemException(new FileProblem(Kind.NOT_ACCESSIBLE, design.getFileName().toString(), 0, "", why));
    }

    /** Uses what was learned. @throws FileProblemException when that cannot be; nothing has changed then */
    void use(Learned learned, Path design) throws FileProblemException {
        DesignSession session = open(design);
        DesignedBlank blank = session.blank().orElseThrow(() -> refused(design, "it cannot be computed; its findings say why"));
        FitData fit = LearnedFit.data(learned, session.design(), blank.blank(), design, session.studio())
                .orElseThrow(() -> refused(design, "with the learned length its sides never close"));
        session.change(edits -> edits.setFit(fit), "use what was learned");
    }

    /** Takes the fit out of use; it is kept in the file. */
    void drop(Path design) throws FileProblemException {
        DesignSession session = open(design);
        session.change(edits -> edits.set("fit", "inUse", false), "drop what was learned");
    }
}
