package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.figures.Clip;
import culm.figures.Size;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.LinkText;

/** Which design of the studio; its address is relative to the file that names it. */
public final class DesignChoice {
    private final Workshop workshop;
    private final Studio studio;
    private final Path from;
    private final Consumer<String> chosen;
    private final LinkText link;
    private String now = "";

    /**
     * A choice.
     *
     * @param parent where it goes
     * @param workshop what the window works with
     * @param studio the studio
     * @param from the file that will hold the address
     * @param chosen told the address
     */
    public DesignChoice(Composite parent, Workshop workshop, Studio studio, Path from, Consumer<String> chosen) {
        this.workshop = workshop;
        this.studio = studio;
        this.from = from;
        this.chosen = chosen;
        link = new LinkText(parent, workshop.look(), "", Size.BODY);
        link.setData("culm.path", "design");
        link.addListener(SWT.Resize, e -> say());
        link.onClick(this::offer);
    }

    /** Shows which one is chosen. @param address null or empty for none */
    public void show(String address) {
        now = address == null ? "" : address;
        say();
    }

    private void say() {
        int room = Math.max(90, link.getClientArea().width - 26);
        link.say(Clip.to(now.isEmpty() ? "choose a design" : name(), workshop.look().measure(), Size.BODY, room) + " ▾");
    }

    private String name() {
        Optional<Path> file = file(from, now);
        return workshop.studio().of(studio).of(FileKind.DESIGN).stream().filter(e -> file.isPresent() && e.file().equals(file.get())).map(StudioEntry::title).findFirst().orElse(now);
    }

    private void offer() {
        Menu menu = new Menu(link);
        for (StudioEntry entry : workshop.studio().of(studio).of(FileKind.DESIGN)) {
            String address = address(from, entry.file());
            MenuItem item = new MenuItem(menu, SWT.RADIO);
            item.setText(entry.title().replace("&", "&&"));
            item.setSelection(address.equals(now));
            item.addListener(SWT.Selection, e -> {
                if (item.getSelection()) {
                    chosen.accept(address);
                }
            });
        }
        menu.addListener(SWT.Hide, e -> link.getDisplay().asyncExec(menu::dispose));
        menu.setLocation(link.toDisplay(0, link.getSize().y));
        menu.setVisible(true);
    }

    /** {@return its control} */
    public LinkText control() {
        return link;
    }

    /** The address of a file, seen from another. */
    public static String address(Path from, Path target) {
        Path folder = from.toAbsolutePath().normalize().getParent();
        Path way = folder.relativize(target.toAbsolutePath().normalize());
        return way.toString().replace(way.getFileSystem().getSeparator(), "/");
    }

    /** The file of an address; empty when it is none. */
    public static Optional<Path> file(Path from, String address) {
        try {
            return address == null || address.isBlank() ? Optional.empty() : Optional.of(from.toAbsolutePath().normalize().resolveSibling(address).normalize());
        } catch (java.nio.file.InvalidPathException e) {
            return Optional.empty();
        }
    }
}
