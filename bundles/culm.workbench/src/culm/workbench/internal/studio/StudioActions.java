package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

import culm.model.ModelFactory;
import culm.model.PartsFile;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.text.Ids;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.assistant.NewDesign;
import culm.workbench.internal.sharing.Attempt;

/** What is done with the studio by menu and keys; asks what it has to know. */
public final class StudioActions {
    private final IWorkbenchWindow window;
    private final Workshop workshop;

    /**
     * Acts in a window.
     *
     * @param window the window
     */
    public StudioActions(IWorkbenchWindow window) {
        this.window = window;
        this.workshop = Workshop.of(window);
    }

    private Shell shell() {
        return window.getShell();
    }

    /** Asks for a folder and opens it as the studio. */
    public void openStudio() {
        DirectoryDialog dialog = new DirectoryDialog(shell());
        dialog.setText("Open a studio");
        dialog.setMessage("The folder of the designs and parts");
        workshop.studio().studio().ifPresent(s -> dialog.setFilterPath(s.root().toString()));
        String folder = dialog.open();
        if (folder != null) {
            workshop.studio().open(Path.of(folder));
            workshop.rememberStudio(Path.of(folder));
        }
    }

    /** Begins a new design with the assistant. */
    public void newDesign() {
        studio().ifPresent(s -> new NewDesign(window, workshop).open());
    }

    /** Asks for a name and begins a new file of parts. */
    public void newParts() {
        Optional<Studio> studio = studio();
        Optional<String> name = studio.flatMap(s -> ask("New parts file", "Name of the parts file", ""));
        name.ifPresent(n -> {
            PartsFile parts = ModelFactory.eINSTANCE.createPartsFile();
            parts.setName(n);
            parts.setId(Ids.of(n, "parts", java.util.List.of()));
            StudioFiles files = files(studio.get());
            Path file = files.free(n, FileKind.PARTS);
            run(files.create(parts, file));
        });
    }

    /** Copies the chosen file. */
    public void copy() {
        chosenEntry().ifPresent(entry -> ask("Copy", "Name of the copy", entry.title() + " copy").ifPresent(name -> {
            StudioFiles files = files(studio().get());
            Path target = files.free(name, entry.kind());
            attempt(() -> run(files.copy(entry, name, target)));
            new Opening(window.getActivePage()).open(target);
        }));
    }

    /** Gives the chosen file another name. */
    public void rename() {
        chosenEntry().ifPresent(entry -> ask("Rename", "New name of " + entry.title(), entry.title()).ifPresent(name -> attempt(() -> {
            Set<StudioEntry> users = entry.kind() == FileKind.PARTS ? StudioFiles.users(workshop.studio().index().get(), entry) : Set.of();
            for (StudioEntry user : users) {
                if (!saved(user, "linked to the new name")) {
                    return;
                }
            }
            if (!saved(entry, "renamed")) {
                return;
            }
            run(files(studio().get()).rename(workshop.studio().index().get(), entry, name));
        })));
    }

    /** Moves the chosen file into the folder of removed files. */
    public void remove() {
        chosenEntry().ifPresent(entry -> attempt(() -> {
            int users = entry.kind() == FileKind.PARTS ? StudioFiles.users(workshop.studio().index().get(), entry).size() : 0;
            if (users > 0 && MessageDialog.open(MessageDialog.CONFIRM, shell(), "Remove " + entry.title(),
                    "Remove " + entry.title() + "? " + users + (users == 1 ? " design uses" : " designs use") + " its parts and cannot be computed without them."
                            + " It goes into the folder .removed, and Undo puts it back.", SWT.NONE, "Remove", "Cancel") != 0) {
                return;
            }
            if (saved(entry, "removed")) {
                run(files(studio().get()).remove(entry));
            }
        }));
    }

    /** Goes to the search above the tree. */
    public void find() {
        try {
            ((StudioView) window.getActivePage().showView(StudioView.ID)).search();
        } catch (PartInitException e) {
            ILog.get().error("The studio cannot be shown.", e);
        }
    }

    /** Reads the folder again. */
    public void refresh() {
        workshop.studio().refresh();
    }

    private Optional<IEditorPart> editor(StudioEntry entry) {
        return new Opening(window.getActivePage()).editorOf(entry.file());
    }

    /** Nothing that is not saved gets lost by what is done with the file. @param what that is, "renamed" @return whether it may be done */
    private boolean saved(StudioEntry entry, String what) {
        Optional<IEditorPart> editor = editor(entry).filter(IEditorPart::isDirty);
        if (editor.isEmpty()) {
            return true;
        }
        return MessageDialog.open(MessageDialog.QUESTION, shell(), "Save " + entry.title(),
                entry.title() + " has changes that are not saved. Save them before it is " + what + "?", SWT.NONE, "Save", "Cancel") == 0
                && window.getActivePage().saveEditor(editor.get(), false);
    }

    private Optional<StudioEntry> chosenEntry() {
        if (!(window.getActivePage().findView(StudioView.ID) instanceof StudioView view)) {
            return Optional.empty();
        }
        return view.chosen().flatMap(node -> node instanceof Node.Entry file ? Optional.of(file.entry())
                : node instanceof Node.Use use ? Optional.of(use.design()) : Optional.empty());
    }

    private Optional<Studio> studio() {
        if (workshop.studio().studio().isEmpty()) {
            openStudio();
        }
        return workshop.studio().studio();
    }

    private StudioFiles files(Studio studio) {
        return new StudioFiles(studio.root(), workshop.files());
    }

    private Optional<String> ask(String title, String question, String first) {
        InputDialog dialog = new InputDialog(shell(), title, question, first, text -> text.isBlank() ? "" : null);
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }

    private void run(FileStep step) {
        attempt(() -> workshop.studio().steps().run(step));
    }

    private void attempt(Attempt attempt) {
        Attempt.at(attempt, e -> MessageDialog.openError(shell(), "That cannot be done", e.problem().message()));
    }
}
