package culm.workbench.internal.parts;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.design.parts.Duplicates;
import culm.design.parts.Duplicates.Found;
import culm.design.parts.Duplicates.Report;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.sharing.PaperDialog;

/** Parts that are the same in every number, whatever they are called; the designs can be brought to use one of them. */
public final class DuplicatesDialog extends PaperDialog {
    private static final Point SIZE = new Point(820, 560);
    private static final int MOST = 200;
    private final Workshop workshop;
    private final Studio studio;
    private Composite list;
    private ScrolledComposite scroll;
    private StudioIndex index;

    /**
     * The dialog for a studio.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param studio the studio
     */
    public DuplicatesDialog(Shell shell, Workshop workshop, Studio studio) {
        super(shell, workshop.look(), "Parts that are there twice", SIZE);
        this.workshop = workshop;
        this.studio = studio;
    }

    @Override
    protected void fill(Composite area) {
        scroll = new ScrolledComposite(area, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        look().dress(scroll, Role.PAPER, Role.INK);
        scroll.addListener(SWT.Resize, e -> fit());
        say("Every file of the studio is read \u2026", Role.INK);
    }

    @Override
    public void create() {
        super.create();
        search();
    }

    private void search() {
        Thread thread = new Thread(() -> {
            StudioIndex now = studio.index();
            Report report = Duplicates.find(studio, now);
            if (!workshop.look().display().isDisposed()) {
                workshop.look().later(() -> show(now, report));
            }
        }, "Culm search for duplicates");
        thread.setDaemon(true);
        thread.start();
    }

    private void show(StudioIndex now, Report report) {
        index = now;
        if (scroll.isDisposed()) {
            return;
        }
        if (list != null) {
            list.dispose();
        }
        String unread = report.problems().isEmpty() ? "" : " " + report.problems().size() + " files could not be read.";
        say((report.groups().isEmpty() ? "No two parts are the same." : "The same in every number, whatever they are called; how well each is known may differ.") + unread,
                Role.INK);
        list = new Composite(scroll, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.verticalSpacing = 4;
        list.setLayout(layout);
        look().dress(list, Role.PAPER, Role.INK);
        report.groups().stream().limit(MOST).forEach(this::group);
        scroll.setContent(list);
        fit();
    }

    private void fit() {
        if (list != null && !list.isDisposed()) {
            int width = scroll.getClientArea().width;
            list.setSize(list.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT));
        }
    }

    private void group(List<Found> same) {
        Label heading = label(list, same.get(0).kind() + ": " + same.stream().map(this::name).collect(Collectors.joining("; ")), Size.BODY, SWT.BOLD, Role.INK);
        ((GridData) heading.getLayoutData()).horizontalSpan = 2;
        ((GridData) heading.getLayoutData()).verticalIndent = 8;
        List<Found> filed = same.stream().filter(f -> !f.copy()).toList();
        Found kept = filed.get(0);
        for (Found other : filed.subList(1, filed.size())) {
            int users = index.usersOf(other.file(), other.id()).size();
            row(name(other) + (users == 0 ? " is used by no design and can be removed from its file" : " is used by " + users + (users == 1 ? " design" : " designs")),
                    users == 0 ? "" : "use " + name(kept) + " instead\u2026",
                    () -> ReplaceDialog.open(getShell(), workshop, studio, other.file(), other.id(), kept.file(), kept.id()));
        }
        same.stream().filter(Found::copy).forEach(copy -> row(studio.shown(copy.file()) + " has a copy of its own", "", () -> { }));
    }

    private void row(String words, String offer, Runnable todo) {
        Label label = label(list, words, Size.BODY, SWT.NORMAL, Role.QUIET);
        ((GridData) label.getLayoutData()).horizontalIndent = 16;
        ((GridData) label.getLayoutData()).widthHint = 300;
        if (offer.isEmpty()) {
            ((GridData) label.getLayoutData()).horizontalSpan = 2;
            return;
        }
        LinkText link = new LinkText(list, look(), offer, Size.BODY);
        link.onClick(() -> {
            todo.run();
            search();
        });
    }

    private String name(Found found) {
        String name = found.name().isBlank() ? found.id().isBlank() ? found.kind() : found.id() : found.name();
        return name + (found.copy() ? " in " + studio.shown(found.file()) : "");
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Close", true);
    }
}
