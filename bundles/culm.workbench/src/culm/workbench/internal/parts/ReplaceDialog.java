package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.design.parts.PartAddress;
import culm.design.parts.Replacement;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex;
import culm.model.studio.StudioIndex.Held;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.PaperDialog;
import culm.workbench.internal.widgets.LinkText;

/** One part takes another's place in the designs that use it: first each design's verdict before and after, then, in one step, the chosen ones. */
public final class ReplaceDialog extends PaperDialog {
    private static final Point SIZE = new Point(980, 600);
    private final Workshop workshop;
    private final Studio studio;
    private final StudioIndex index;
    private final Held from;
    private final List<Held> others;
    private final int first;
    private Combo by;
    private PreviewGrid grid;
    private PreviewRun run;

    private ReplaceDialog(Shell shell, Workshop workshop, Studio studio, StudioIndex index, Held from, List<Held> others, int first) {
        super(shell, workshop.look(), "Replace " + from.part().title(), SIZE);
        this.workshop = workshop;
        this.studio = studio;
        this.index = index;
        this.from = from;
        this.others = others;
        this.first = first;
    }

    /** Opens it for a part of a file. */
    public static void open(Shell shell, Workshop workshop, Studio studio, Path file, String id) {
        open(shell, workshop, studio, file, id, null, "");
    }

    /** Opens it with the part that takes its place chosen already. @param by file of that part; null for none */
    static void open(Shell shell, Workshop workshop, Studio studio, Path file, String id, Path by, String byId) {
        StudioIndex index = studio.index();
        List<Held> all = index.parts();
        all.stream().filter(h -> is(h, file, id)).findFirst().ifPresent(from -> {
            List<Held> others = all.stream().filter(h -> h.part().kind().equals(from.part().kind()) && !is(h, file, id)).toList();
            int first = 0;
            for (int i = 0; by != null && i < others.size(); i++) {
                first = is(others.get(i), by, byId) ? i : first;
            }
            new ReplaceDialog(shell, workshop, studio, index, from, others, first).open();
        });
    }

    private static boolean is(Held held, Path file, String id) {
        return held.file().file().equals(file) && held.part().id().equals(id);
    }

    @Override
    protected void fill(Composite area) {
        Composite asked = new Composite(area, SWT.NONE);
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        asked.setLayout(layout);
        look().dress(asked, Role.PAPER, Role.INK);
        asked.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        Label words = new Label(asked, SWT.NONE);
        words.setText("by the " + from.part().kind());
        words.setFont(look().font(Size.BODY, SWT.NORMAL));
        look().dress(words, Role.PAPER, Role.INK);
        by = new Combo(asked, SWT.READ_ONLY);
        by.setFont(look().font(Size.BODY, SWT.NORMAL));
        by.setItems(others.stream().map(h -> h.part().title() + "  (" + h.file().title() + ")").toArray(String[]::new));
        by.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false)); // cut rather than make the dialog wider
        by.select(first);
        by.setData("culm.ask", "by");
        by.addListener(SWT.Selection, e -> preview());
        new LinkText(asked, look(), "all", Size.BODY).onClick(() -> grid.takeAll(true));
        new LinkText(asked, look(), "none", Size.BODY).onClick(() -> grid.takeAll(false));
        grid = new PreviewGrid(area, look(), workshop.units().now());
        grid.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        grid.onChange(this::count);
        grid.addListener(SWT.Dispose, e -> stop());
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Replace", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        preview();
    }

    private void stop() {
        if (run != null) {
            run.stop();
        }
    }

    private Replacement replacement() {
        Held to = others.get(by.getSelectionIndex());
        return new Replacement(studio, workshop.bridge(), workshop.rules(), new PartAddress(from.file().file(), from.part().id()),
                new PartAddress(to.file().file(), to.part().id()));
    }

    private void preview() {
        stop();
        grid.clear();
        if (others.isEmpty()) {
            say("The studio has no other " + from.part().kind() + ".", Role.DOES_NOT);
            enable(false);
            return;
        }
        try {
            Replacement replacement = replacement();
            run = new PreviewRun(replacement, replacement.users(index), getShell().getDisplay(), grid, this::count);
            count();
            run.start();
        } catch (FileProblemException e) {
            say(e.problem().message(), Role.DOES_NOT);
            enable(false);
        }
    }

    private void count() {
        int waiting = run == null ? 0 : run.waiting();
        int taken = grid.taken().size();
        say(waiting > 0 ? waiting + " designs are still to be looked at." : taken == 0 ? "No design is chosen."
                : taken + (taken == 1 ? " design changes" : " designs change") + "; " + grid.worse() + " of them get a worse verdict. Nothing is written yet.",
                grid.worse() > 0 ? Role.DOES_NOT : Role.INK);
        enable(waiting == 0 && taken > 0);
    }

    private void enable(boolean now) {
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(now);
        }
    }

    @Override
    protected void okPressed() {
        try {
            new ReplaceStep(workshop, replacement(), from, others.get(by.getSelectionIndex())).run(grid.taken());
            super.okPressed();
        } catch (FileProblemException e) {
            say(e.problem().message(), Role.DOES_NOT);
        }
    }
}
