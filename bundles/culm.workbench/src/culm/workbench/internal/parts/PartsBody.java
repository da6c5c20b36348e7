package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.figures.Role;
import culm.figures.Size;
import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.widgets.Focus;
import culm.workbench.internal.widgets.LinkText;

/** What stands in the editor of parts: the list, below it who uses the chosen part, then its numbers, and what is known of it above its drawing. */
final class PartsBody {
    private static final int MARGIN = 18;
    private static final int LIST = 230;
    private static final int FORM = 300;
    private static final int USERS = 5;
    private final PartsSession session;
    private final Consumer<FileProblemException> refused;
    private final Composite all;
    private final Label title;
    private final GuardBars guards;
    private final PartsList list;
    private final Composite changing;
    private final PartForm form;
    private final PartAbout about;
    private final UsersList users;
    private final PartCanvas drawing;
    private final LinkText replace;

    PartsBody(Composite parent, PartsSession session, Consumer<FileProblemException> refused, Consumer<Path> open) {
        this.session = session;
        this.refused = refused;
        Look look = session.workshop().look();
        all = new Composite(parent, SWT.NONE);
        all.setLayout(grid(3, MARGIN, 8));
        look.dress(all, Role.PAPER, Role.INK);
        title = new Label(all, SWT.NONE);
        title.setFont(look.font(Size.TITLE, SWT.BOLD));
        look.dress(title, Role.PAPER, Role.INK);
        title.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 3, 1));
        guards = new GuardBars(all, session, () -> PartsEditor.missing(session), refused);
        GridData bars = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 3, 1);
        bars.horizontalIndent = -MARGIN; // they have the same margin themselves
        guards.setLayoutData(bars);
        Composite left = column(look, LIST);
        list = new PartsList(left, session.workshop());
        list.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Composite links = new Composite(left, SWT.NONE);
        links.setLayout(grid(3, 0, 0));
        look.dress(links, Role.PAPER, Role.INK);
        changing = links;
        link(links, look, "new\u2026").onClick(this::offerNew);
        link(links, look, "copy").onClick(() -> chosen().ifPresent(p -> add(maker().like(p))));
        link(links, look, "remove").onClick(() -> chosen().ifPresent(this::remove));
        form = new PartForm(all, session);
        GridData middle = new GridData(SWT.FILL, SWT.FILL, false, true);
        middle.widthHint = FORM;
        form.setLayoutData(middle);
        Composite right = column(look, SWT.DEFAULT);
        about = new PartAbout(right, session, refused);
        about.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        drawing = new PartCanvas(right, look, session.workshop().units());
        drawing.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        users = new UsersList(left, session.workshop(), open);
        GridData some = new GridData(SWT.FILL, SWT.FILL, true, false);
        some.heightHint = users.height(USERS);
        users.setLayoutData(some);
        left.addListener(SWT.Resize, e -> some.heightHint = users.height(Math.max(USERS, left.getSize().y / 3 / users.line())));
        replace = link(left, look, "replace it in designs\u2026");
        replace.onClick(() -> chosen().ifPresent(p -> ReplaceDialog.open(all.getShell(), session.workshop(), session.studio(), session.file(), p.getId())));
        list.onChosen(p -> showChosen());
    }

    private static GridLayout grid(int columns, int margin, int spacing) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = margin;
        layout.marginHeight = spacing;
        layout.horizontalSpacing = columns == 1 ? 0 : 14;
        return layout;
    }

    private Composite column(Look look, int width) {
        Composite column = new Composite(all, SWT.NONE);
        column.setLayout(grid(1, 0, 4));
        GridData data = new GridData(SWT.FILL, SWT.FILL, width == SWT.DEFAULT, true);
        data.widthHint = width;
        column.setLayoutData(data);
        look.dress(column, Role.PAPER, Role.INK);
        return column;
    }

    private static LinkText link(Composite parent, Look look, String words) {
        return new LinkText(parent, look, words, Size.BODY);
    }

    private void offerNew() {
        Menu menu = new Menu(all.getShell(), SWT.POP_UP);
        for (String kind : List.of("staple", "gouge", "shape", "thread")) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText("New " + kind);
            item.setImage(session.workshop().icons().get(kind));
            item.addListener(SWT.Selection, e -> make(kind));
        }
        menu.addListener(SWT.Hide, e -> all.getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
    }

    /** Adds a part with the usual numbers. */
    void make(String kind) {
        Attempt.at(() -> add(maker().usual(kind)), refused);
    }

    private NewPart maker() {
        return new NewPart(session.document(), session.workshop().bridge().profiles());
    }

    private void add(Part part) {
        Attempt.at(() -> {
            session.add(part);
            session.part(part.getId()).ifPresent(this::choose);
            about.name().control().setFocus();
        }, refused);
    }

    private void remove(Part part) {
        int used = users.count();
        if (used > 0 && MessageDialog.open(MessageDialog.CONFIRM, all.getShell(), "Remove " + PartWords.name(part),
                "Remove " + PartWords.name(part) + "? " + used + (used == 1 ? " design uses it and cannot be computed without it." : " designs use it and cannot be computed without it.")
                        + " Undo puts it back.", SWT.NONE, "Remove", "Cancel") != 0) {
            return;
        }
        Attempt.at(() -> session.remove(part), refused);
    }

    void show(String name) {
        title.setText(name);
        changing.setVisible(session.readOnly().isEmpty());
        list.show(List.copyOf(session.document().getParts()));
        if (list.selected() == null && !session.document().getParts().isEmpty()) {
            list.select(session.document().getParts().get(0));
        }
        showChosen();
    }

    private void showChosen() {
        Part part = list.selected();
        form.show(part);
        about.show(part);
        users.show(PartsEditor.index(session), session.file(), part == null || part.getId() == null ? "" : part.getId());
        replace.setVisible(users.count() > 0);
        drawing.show(part == null ? "" : PartWords.kind(part),
                part == null ? Optional.empty() : PartBlank.of(part, session.edits(part), session.workshop().bridge().profiles()));
    }

    void choose(Part part) {
        list.select(part);
        showChosen();
    }

    Optional<Part> chosen() {
        return Optional.ofNullable(list.selected());
    }

    PartCanvas drawing() {
        return drawing;
    }

    GuardBars guards() {
        return guards;
    }

    void focusList() {
        Focus.into(all, list::setFocus);
    }

    boolean isDisposed() {
        return all.isDisposed();
    }
}
