package culm.workbench.internal.parts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.design.parts.PartAddress;
import culm.figures.Clip;
import culm.figures.Size;
import culm.model.Design;
import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Link;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.model.studio.StudioIndex.Held;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.widgets.LinkText;

/** Which part of the studio a design uses: its name, and behind it a menu of the others, of copying it, and of opening its file. */
public final class PartLink {
    /** Behind the name of a part that follows no file of parts, though it may be called as one there. */
    private static final String OWN = ", own";
    private final DesignSession session;
    private final Workshop workshop;
    private final String word;
    private final Consumer<FileProblemException> refused;
    private final LinkText link;

    /**
     * A link for one part.
     *
     * @param parent where it goes
     * @param session the design
     * @param word staple, gouge, shape or thread
     * @param refused told why something cannot be done
     */
    public PartLink(Composite parent, DesignSession session, String word, Consumer<FileProblemException> refused) {
        this.session = session;
        this.workshop = session.workshop();
        this.word = word;
        this.refused = refused;
        link = new LinkText(parent, workshop.look(), "", Size.SMALL);
        link.setData("culm.partLink", word);
        link.setData("culm.partLink.menu", this);
        link.onClick(() -> menu().setVisible(true));
    }

    /**
     * Shows what is used now in links that stand side by side: a short name leaves its room to the others.
     *
     * @param links the links
     * @param room how wide their names may be together
     */
    public static void show(List<PartLink> links, int room) {
        List<Wanted> shortest = links.stream().map(PartLink::wanted).sorted(Comparator.comparingDouble(Wanted::width)).toList();
        double left = room;
        for (int i = 0; i < shortest.size(); i++) {
            Wanted now = shortest.get(i);
            double most = left / (shortest.size() - i);
            now.link.show(now.name, most);
            left -= Math.min(most, now.width);
        }
    }

    /** What one would say, given room enough. */
    private record Wanted(PartLink link, String name, double width) {
    }

    private Wanted wanted() {
        String name = name();
        return new Wanted(this, name, workshop.look().measure().width(name, Size.SMALL, false));
    }

    private void show(String name, double room) {
        link.setToolTipText(word + ": " + name + (linked() ? ", linked" : "") + (locked() ? "." : ". Click to choose another."));
        String words = Clip.middle(name, workshop.look().measure(), Size.SMALL, room) + " \u25be";
        if (!words.equals(link.words())) {
            link.say(words);
            link.requestLayout();
        }
    }

    private Part part() {
        Design design = session.design();
        return switch (word) {
            case "staple" -> design.getStaple();
            case "gouge" -> design.getGouge();
            case "shape" -> design.getShape();
            default -> design.getThread();
        };
    }

    private boolean linked() {
        return part() != null && part().getLink() != null;
    }

    private boolean locked() {
        return session.readOnly().isPresent();
    }

    private String name() {
        Part part = part();
        if (part == null) {
            return "no " + word;
        }
        if (part.getLink() == null) {
            return part.getName() == null || part.getName().isBlank() ? "own " + word : part.getName() + OWN;
        }
        try {
            return PartWords.name(session.studio().resolve(session.file(), session.shownName(), part).part());
        } catch (FileProblemException e) {
            return part.getLink() + ", missing";
        }
    }

    /** {@return the menu of what can be done; it goes away when it is left} */
    public Menu menu() {
        Menu menu = new Menu(link.getShell(), SWT.POP_UP);
        StudioIndex index = workshop.studio().of(session.studio());
        List<Held> parts = index.parts().stream().filter(h -> h.part().kind().equals(word)).toList();
        boolean several = parts.stream().map(Held::file).distinct().count() > 1;
        Optional<PartAddress> now = linked() ? address() : Optional.empty();
        for (Held held : parts) {
            MenuItem item = item(menu, SWT.RADIO, held.part().title() + (several ? "  (" + held.file().title() + ")" : ""), () -> use(held));
            item.setEnabled(!locked());
            item.setSelection(now.isPresent() && now.get().equals(new PartAddress(held.file().file(), held.part().id())));
        }
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, SWT.PUSH, "Copy into this design", () -> change(edits -> edits.unlink(word), "copy the " + word + " into the design")).setEnabled(linked() && !locked());
        if (part() != null && !linked() && !locked()) {
            index.of(FileKind.PARTS).forEach(file -> item(menu, SWT.PUSH, "Put into " + file.title(), () -> putInto(file)));
        }
        item(menu, SWT.PUSH, "Open its file", () -> now.ifPresent(this::open)).setEnabled(linked());
        menu.addListener(SWT.Hide, e -> link.getDisplay().asyncExec(menu::dispose));
        return menu;
    }

    /** Where the link leads to; empty when it is no address. */
    private Optional<PartAddress> address() {
        try {
            return Optional.of(PartAddress.of(Link.parse(part().getLink()), session.file()));
        } catch (Link.BadLinkException e) {
            return Optional.empty(); // the design says so itself
        }
    }

    private static MenuItem item(Menu menu, int style, String text, Runnable todo) {
        MenuItem item = new MenuItem(menu, style);
        item.setText(text.replace("&", "&&"));
        item.addListener(SWT.Selection, e -> {
            if (style != SWT.RADIO || item.getSelection()) {
                todo.run();
            }
        });
        return item;
    }

    private void use(Held held) {
        Link to = Link.between(session.file(), held.file().file(), held.part().id());
        if (!linked() || !to.toString().equals(part().getLink())) {
            change(edits -> edits.link(word, to), "use " + held.part().title());
        }
    }

    private void change(DesignSession.Change change, String label) {
        Attempt.at(() -> session.change(change, label), refused);
    }

    private void putInto(StudioEntry file) {
        Attempt.at(() -> {
            session.requireChange();
            Link to = new PartFiling(workshop, session.studio()).put(part(), file, word + " of " + session.blank().map(b -> b.name()).orElse(session.shownName()), session.file());
            change(edits -> edits.link(word, to), "put the " + word + " into " + file.title());
        }, refused);
    }

    private void open(PartAddress place) {
        var page = org.eclipse.ui.PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        new Opening(page).open(place.file()).filter(PartsEditor.class::isInstance).ifPresent(e -> ((PartsEditor) e).choose(place.id()));
    }
}
