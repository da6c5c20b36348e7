package culm.workbench.internal.explore;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.Design;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.studio.NewFile;
import culm.workbench.internal.widgets.LinkText;

/** What can be done with something that was found: use it here, keep it as a variant, open it as a new design. */
public final class PickActions extends Composite {
    private final Workshop workshop;
    private final DesignSession session;
    private final Supplier<Optional<Picked>> picked;
    private final Runnable nothing;
    private final Consumer<FileProblemException> refused;

    PickActions(Composite parent, Workshop workshop, DesignSession session, Supplier<Optional<Picked>> picked, Runnable nothing,
            Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.picked = picked;
        this.nothing = nothing;
        this.refused = refused;
        workshop.look().dress(this, Role.PAPER, Role.INK);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 8;
        setLayout(layout);
        link("use it here", "Changes this design to it, as one step that can be taken back", this::use);
        link("keep as a variant…", "Keeps it under a name in this design's file", this::keep);
        link("open as a new design…", "Makes a design of its own of it", this::open);
    }

    /** Adds something else that can be done. */
    LinkText link(String words, String help, Runnable todo) {
        LinkText link = new LinkText(this, workshop.look(), words, Size.BODY);
        link.setToolTipText(help);
        link.onClick(todo);
        return link;
    }

    private interface Act {
        void with(Picked what, Design made) throws FileProblemException;
    }

    private void act(Act act) {
        picked.get().ifPresentOrElse(what -> Attempt.at(() -> act.with(what, what.in(workshop, session)), refused), nothing);
    }

    /** Changes the design. */
    public void use() {
        act((what, made) -> session.change(edits -> edits.use(made, what.words()), ""));
    }

    /** Asks for a name and keeps it as a variant. */
    public void keep() {
        act((what, made) -> {
            Optional<String> name = ask("Keep as a variant", "Name of the variant", what.words());
            if (name.isPresent()) {
                session.change(edits -> edits.keep(made, name.get()), "");
            }
        });
    }

    /** Asks for a name and opens it as a new design. */
    public void open() {
        act((what, made) -> {
            Optional<String> name = ask("Open as a new design", "Name of the design", session.design().getName() + ", " + what.words());
            if (name.isPresent()) {
                open(workshop, session, made, name.get());
            }
        });
    }

    /** Writes a design into a file of its own and opens it. */
    public static void open(Workshop workshop, DesignSession session, Design made, String name) throws FileProblemException {
        made.setName(name);
        made.setId(Ids.of(name, "design", java.util.List.of()));
        made.getVariants().clear();
        NewFile file = NewFile.beside(workshop, session.studio(), session.file(), name);
        file.write(made);
        Path path = file.file();
        new Opening(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage()).open(path);
    }

    private Optional<String> ask(String title, String what, String first) {
        InputDialog dialog = new InputDialog(getShell(), title, what, first, text -> text.isBlank() ? "A name is needed." : null);
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }
}
