package culm.workbench.internal.sharing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.eclipse.ui.dialogs.FilteredList;

import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.text.NaturalOrder;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.history.HistoryEditor;
import culm.workbench.internal.history.HistoryInput;
import culm.workbench.internal.pair.PairEditor;
import culm.workbench.internal.pair.PairInput;
import culm.workbench.internal.parts.DuplicatesDialog;
import culm.workbench.internal.parts.PartsEditor;
import culm.workbench.internal.parts.PartsSession;
import culm.workbench.internal.parts.ReplaceDialog;
import culm.workbench.internal.plugins.PlugInsDialog;
import culm.workbench.internal.studio.Node;
import culm.workbench.internal.studio.StudioView;

/** What is done with parts, versions and plug-ins by menu and keys. */
public final class SharingActions {
    private final IWorkbenchWindow window;
    private final Workshop workshop;

    /**
     * Acts in a window.
     *
     * @param window the window
     */
    public SharingActions(IWorkbenchWindow window) {
        this.window = window;
        this.workshop = Workshop.of(window);
    }

    private Shell shell() {
        return window.getShell();
    }

    private Optional<Studio> studio() {
        if (workshop.studio().studio().isEmpty()) {
            MessageDialog.openInformation(shell(), "No studio is open", "Open a studio first.");
        }
        return workshop.studio().studio();
    }

    /** Replaces the part that is chosen in the tree or in the editor of parts. */
    public void replace() {
        if (window.getActivePage().getActivePart() instanceof PartsEditor editor && editor.chosen().isPresent()) {
            PartsSession session = editor.getAdapter(PartsSession.class);
            ReplaceDialog.open(shell(), workshop, session.studio(), session.file(), editor.chosen().get().getId());
            return;
        }
        Optional<Node.Held> held = chosen().filter(Node.Held.class::isInstance).map(Node.Held.class::cast);
        if (held.isEmpty()) {
            MessageDialog.openInformation(shell(), "No part is chosen", "Choose a staple, gouge, shape or thread below the parts of the studio first.");
            return;
        }
        Path file = held.get().file().file();
        studio().ifPresent(s -> ReplaceDialog.open(shell(), workshop, s, file, held.get().part().id()));
    }

    /** Lists parts that are there twice. */
    public void duplicates() {
        studio().ifPresent(s -> new DuplicatesDialog(shell(), workshop, s).open());
    }

    /** Asks for the name that others see. */
    public void name() {
        InputDialog dialog = new InputDialog(shell(), "My name", "The name that others see while you have a file open, and at the versions you keep", workshop.who(),
                text -> text.isBlank() ? "" : null);
        if (dialog.open() == Window.OK) {
            workshop.who(dialog.getValue().strip());
        }
    }

    /** Shows which plug-in brings what. */
    public void plugIns() {
        new PlugInsDialog(shell(), workshop).open();
    }

    /** Shows the studio's history. */
    public void history() {
        studio().ifPresent(s -> open(new HistoryInput(s.root()), HistoryEditor.ID));
    }

    /** Compares the design that is edited, or chosen in the tree, with another one. */
    public void compare() {
        Optional<Path> first = window.getActivePage().getActiveEditor() instanceof DesignEditor editor ? Optional.of(editor.getAdapter(DesignSession.class).file())
                : chosen().filter(Node.Entry.class::isInstance).map(n -> ((Node.Entry) n).entry()).filter(e -> e.kind() == FileKind.DESIGN).map(StudioEntry::file);
        if (first.isEmpty()) {
            MessageDialog.openInformation(shell(), "No design is chosen", "Open a design, or choose one in the studio, first.");
            return;
        }
        List<StudioEntry> others = workshop.studio().index().map(i -> i.of(FileKind.DESIGN).stream().filter(e -> !e.file().equals(first.get())).toList()).orElse(List.of());
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell(), LabelProvider.createTextProvider(e -> ((StudioEntry) e).title())) {
            @Override
            protected FilteredList createFilteredList(Composite parent) {
                FilteredList list = super.createFilteredList(parent);
                list.setComparator((a, b) -> NaturalOrder.INSTANCE.compare((String) a, (String) b));
                return list;
            }
        };
        dialog.setTitle("Compare with");
        dialog.setMessage("The other design");
        dialog.setElements(others.toArray());
        dialog.setMultipleSelection(false);
        if (dialog.open() == Window.OK && dialog.getFirstResult() instanceof StudioEntry other) {
            open(new PairInput(first.get(), other.file()), PairEditor.ID);
        }
    }

    private void open(IEditorInput input, String editor) {
        try {
            window.getActivePage().openEditor(input, editor);
        } catch (PartInitException e) {
            MessageDialog.openError(shell(), "This cannot be opened", e.getMessage());
        }
    }

    private Optional<Node> chosen() {
        return window.getActivePage().findView(StudioView.ID) instanceof StudioView view ? view.chosen() : Optional.empty();
    }
}
