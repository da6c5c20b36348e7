package culm.workbench.internal.history;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPage;

import culm.figures.Role;
import culm.figures.Size;
import culm.history.FileChange;
import culm.history.Version;
import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.Focus;
import culm.workbench.internal.widgets.LinkText;

/** What stands in the history of a studio: what can be done, the versions, and what changed in the chosen one. */
final class HistoryBody {
    private static final String OFF = "This studio keeps no history yet. With one, every version that is kept can be looked at and gone back to, and the studio can be "
            + "shared through a folder or a server of yours. It stays in this folder; nothing is sent unless you say so.";
    private final Workshop workshop;
    private final Look look;
    private final Path studio;
    private final HistoryWork work;
    private final HistorySteps steps;
    private final Composite all;
    private final Label sentence;
    private final Composite links;
    /** The toolkit gives a choice no edge of its own in the dark. */
    private final Composite framed;
    private final Combo which;
    private final VersionsList versions;
    private final ChangesText changes;
    private final LinkText back;
    private List<StudioEntry> files = List.of();
    private HistoryShown shown = HistoryShown.OFF;
    private String note = "";
    private Role noteInk = Role.INK;

    HistoryBody(Composite parent, Workshop workshop, Path studio, IWorkbenchPage page) {
        this.workshop = workshop;
        this.look = workshop.look();
        this.studio = studio;
        this.work = new HistoryWork(studio, workshop.bridge().profiles(), look.display(), this::refused);
        this.steps = new HistorySteps(workshop, studio, work, page, this::note, this::ask);
        all = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 18;
        layout.marginHeight = 10;
        layout.horizontalSpacing = 18;
        all.setLayout(layout);
        look.dress(all, Role.PAPER, Role.INK);
        label("History of " + studio.getFileName(), Size.TITLE, SWT.BOLD);
        sentence = label("", Size.BODY, SWT.NORMAL);
        links = new Composite(all, SWT.NONE);
        RowLayout row = new RowLayout();
        row.marginLeft = 0;
        row.spacing = 14;
        links.setLayout(row);
        look.dress(links, Role.PAPER, Role.INK);
        links.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        framed = new Composite(all, SWT.NONE);
        FillLayout edge = new FillLayout();
        edge.marginWidth = 1;
        edge.marginHeight = 1;
        framed.setLayout(edge);
        framed.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        look.dress(framed, Role.RULE, Role.INK);
        which = new Combo(framed, SWT.READ_ONLY);
        which.setFont(look.font(Size.BODY, SWT.NORMAL));
        look.dress(which, Role.PANEL, Role.INK);
        which.setItems("everything in the studio");
        which.select(0);
        which.addListener(SWT.Selection, e -> ask());
        back = new LinkText(all, look, "go back to this version\u2026", Size.BODY);
        back.onClick(() -> versions().chosen().ifPresent(v -> steps.back(v, file())));
        versions = new VersionsList(all, look, this::showChanges);
        versions.table().setLayoutData(half());
        changes = new ChangesText(all, look, workshop.units());
        changes.control().setLayoutData(half());
        Runnable end = workshop.studio().onChange(changed -> ask());
        all.addListener(SWT.Dispose, e -> {
            end.run();
            work.close();
        });
        ask();
    }

    private VersionsList versions() {
        return versions;
    }

    private static GridData half() {
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.widthHint = 300;
        return data;
    }

    private Label label(String text, Size size, int style) {
        Label label = new Label(all, SWT.WRAP);
        label.setText(text);
        label.setFont(look.font(size, style));
        look.dress(label, Role.PAPER, Role.INK);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        wide.widthHint = 600;
        label.setLayoutData(wide);
        return label;
    }

    /** Reads the history again. */
    private void ask() {
        if (!all.isDisposed()) {
            Optional<Path> file = file();
            work.start(() -> HistoryShown.read(studio, workshop.bridge().profiles(), file), this::publish);
        }
    }

    private Optional<Path> file() {
        int index = which.getSelectionIndex();
        return index <= 0 ? Optional.empty() : Optional.of(files.get(index - 1).file());
    }

    private void publish(HistoryShown now) {
        if (all.isDisposed()) {
            return;
        }
        boolean other = now.on() != shown.on() || !now.sharedThrough().equals(shown.sharedThrough()) || links.getChildren().length == 0;
        shown = now;
        if (other) {
            offer();
        }
        fillFiles();
        say();
        framed.setVisible(now.on());
        versions.table().setVisible(now.on());
        versions.show(now);
        showChanges();
    }

    private String sentence() {
        if (!shown.on()) {
            return OFF;
        }
        int count = shown.versions().size();
        return count + (count == 1 ? " version" : " versions") + (shown.unkept().isEmpty() ? "; everything is kept" : "; something is not kept yet") + ". "
                + shown.sharedThrough().map(a -> "Shared through " + a + ".").orElse("Not shared.");
    }

    private void fillFiles() {
        Optional<Path> before = file();
        files = workshop.studio().index().map(i -> i.entries().stream().filter(e -> e.kind() == FileKind.DESIGN || e.kind() == FileKind.PARTS).toList()).orElse(List.of());
        List<String> items = new ArrayList<>(List.of("everything in the studio"));
        files.forEach(f -> items.add(f.title()));
        if (!items.equals(List.of(which.getItems()))) {
            which.setItems(items.toArray(String[]::new));
            int again = before.map(b -> files.stream().map(StudioEntry::file).toList().indexOf(b)).orElse(-1);
            which.select(again + 1);
        }
    }

    private void offer() {
        for (var child : links.getChildren()) {
            child.dispose();
        }
        if (!shown.on()) {
            link("begin a history\u2026", steps::begin);
            link("join a shared studio\u2026", steps::join);
        } else {
            link("keep a version\u2026", steps::keep);
            if (shown.sharedThrough().isPresent()) {
                link("receive", steps::receive);
                link("send", steps::send);
            }
            link("share through\u2026", () -> steps.share(shown.sharedThrough()));
        }
        links.requestLayout();
    }

    private void link(String words, Runnable todo) {
        new LinkText(links, look, words, Size.BODY).onClick(todo);
    }

    private void showChanges() {
        Optional<Version> chosen = versions.chosen();
        back.setVisible(chosen.isPresent());
        back.say(file().isPresent() ? "go back to it with this file\u2026" : "go back to this version\u2026");
        back.requestLayout();
        if (chosen.isEmpty()) {
            if (shown.on()) {
                changes.show(shown.unkept().isEmpty() ? "" : "Not kept yet", "", shown.unkept());
            } else {
                changes.clear();
            }
            return;
        }
        Version version = chosen.get();
        Optional<Version> before = versions.before();
        if (before.isEmpty()) {
            changes.show(heading(version), VersionsList.note(version), List.of());
            return;
        }
        Optional<Path> file = file();
        work.with(history -> history.changes(before.get(), version), list -> {
            if (!all.isDisposed() && versions.chosen().filter(version::equals).isPresent()) {
                changes.show(heading(version), "", only(list, file));
            }
        });
    }

    private List<FileChange> only(List<FileChange> list, Optional<Path> file) {
        return list.stream().filter(c -> file.isEmpty() || studio.resolve(c.file()).equals(file.get())).toList();
    }

    private static String heading(Version version) {
        return VersionsList.when(version) + ", " + version.who();
    }

    /** What came of the last step; it stays until the next one. */
    private void note(String text, Role ink) {
        note = text;
        noteInk = ink;
        if (!sentence.isDisposed()) {
            say();
        }
    }

    private void say() {
        sentence.setText(note.isEmpty() ? sentence() : note + " " + sentence());
        sentence.setForeground(look.colour(note.isEmpty() ? Role.INK : noteInk));
        sentence.requestLayout();
    }

    private void refused(String why) {
        note(why, Role.DOES_NOT);
    }

    boolean busy() {
        return work.busy();
    }

    void choose(int row) {
        versions.choose(row);
        showChanges();
    }

    int rows() {
        return versions.table().getItemCount();
    }

    String told() {
        return sentence.getText() + "\n" + changes.control().getText();
    }

    void setFocus() {
        Focus.into(all, shown.on() ? versions.table()::setFocus : links::setFocus);
    }
}
