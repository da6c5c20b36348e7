package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;

import culm.design.DesignedBlank;
import culm.model.Batch;
import culm.model.Document;
import culm.model.ModelFactory;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.text.Ids;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.batch.BatchActions;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.bench.paper.CardDialog;
import culm.workbench.internal.bench.paper.TemplateDialog;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.studio.NewFile;
import culm.workbench.internal.studio.StudioActions;

/** What is done at the bench by menu and keys. */
public final class BenchActions {
    private final IWorkbenchWindow window;
    private final Workshop workshop;

    /**
     * Acts in a window.
     *
     * @param window the window
     */
    public BenchActions(IWorkbenchWindow window) {
        this.window = window;
        this.workshop = Workshop.of(window);
    }

    private Optional<IEditorPart> editor() {
        return Optional.ofNullable(window.getActivePage().getActiveEditor());
    }

    /** Begins a new batch of staples, for the design that is open or the only one of the studio. */
    public void newBatch() {
        Batch batch = ModelFactory.eINSTANCE.createBatch();
        make("New batch of staples", "Name of the batch", batch, FileKind.BATCH, file -> likelyDesign().ifPresent(d -> batch.setDesign(DesignChoice.address(file, d))));
    }

    /** Begins a new reed log. */
    public void newLog() {
        make("New reed log", "Name of the log", ModelFactory.eINSTANCE.createReedLog(), FileKind.LOG, file -> { });
    }

    private void make(String title, String question, Document document, FileKind kind, java.util.function.Consumer<Path> fill) {
        if (workshop.studio().studio().isEmpty()) {
            new StudioActions(window).openStudio();
        }
        Optional<Studio> studio = workshop.studio().studio();
        if (studio.isEmpty()) {
            return;
        }
        InputDialog dialog = new InputDialog(window.getShell(), title, question, "", text -> text.isBlank() ? "" : null);
        if (dialog.open() != Window.OK) {
            return;
        }
        String name = dialog.getValue().strip();
        document.setName(name);
        document.setId(Ids.of(name, kind.ending().substring(1), List.of()));
        NewFile file = NewFile.of(workshop, studio.get(), name, kind);
        fill.accept(file.file());
        Attempt.at(() -> {
            file.write(document);
            new Opening(window.getActivePage()).open(file.file());
        }, this::refused);
    }

    private Optional<Path> likelyDesign() {
        if (editor().orElse(null) instanceof DesignEditor design) {
            return Optional.of(design.getAdapter(DesignSession.class).file());
        }
        List<Path> designs = workshop.studio().index().map(i -> i.of(FileKind.DESIGN).stream().map(StudioEntry::file).toList()).orElse(List.of());
        return designs.size() == 1 ? Optional.of(designs.get(0)) : Optional.empty();
    }

    /** Opens the card of the design or of the batch that is open. */
    public void card() {
        IEditorPart editor = editor().orElse(null);
        if (editor instanceof BatchEditor batch) {
            new BatchActions(batch).card(Optional.empty());
        } else if (editor instanceof DesignEditor design) {
            DesignSession session = design.getAdapter(DesignSession.class);
            blank(session).ifPresent(blank -> Attempt.at(
                    () -> CardDialog.of(window.getShell(), workshop, session.design(), session.file(), session.studio(), blank).open(), this::refused));
        }
    }

    /** Opens the templates of the design that is open. */
    public void template() {
        if (editor().orElse(null) instanceof DesignEditor design) {
            blank(design.getAdapter(DesignSession.class)).ifPresent(blank -> new TemplateDialog(window.getShell(), workshop, blank).open());
        }
    }

    private Optional<DesignedBlank> blank(DesignSession session) {
        Optional<DesignedBlank> blank = session.blank().filter(b -> b.blank().problems().isEmpty());
        if (blank.isEmpty()) {
            MessageDialog.openInformation(window.getShell(), "No card yet", "This design cannot be computed yet: " + session.shown().verdict().sentence() + ".");
        }
        return blank;
    }

    /** Begins a new blank in the log that is open. */
    public void newBlank() {
        log().ifPresent(LogEditor::newBlank);
    }

    /** Says what went wrong with the chosen blank. */
    public void wrong() {
        log().ifPresent(l -> l.showPage(LogEditor.Page.WRONG));
    }

    /** Shows what the log teaches. */
    public void learn() {
        log().ifPresent(l -> l.showPage(LogEditor.Page.LEARN));
    }

    private Optional<LogEditor> log() {
        return editor().filter(LogEditor.class::isInstance).map(LogEditor.class::cast);
    }

    /** Takes a table into what is open. */
    public void readTable() {
        log().ifPresent(LogEditor::readTable);
        if (editor().orElse(null) instanceof BatchEditor batch) {
            new BatchActions(batch).readTable();
        }
    }

    /** Writes what is open as a table. */
    public void writeTable() {
        log().ifPresent(LogEditor::writeTable);
        if (editor().orElse(null) instanceof BatchEditor batch) {
            new BatchActions(batch).writeTable();
        }
    }

    private void refused(FileProblemException e) {
        MessageDialog.openError(window.getShell(), "That cannot be done", e.problem().message());
    }
}
