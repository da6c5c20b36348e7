package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Size;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Workshop;

/** Which design of the studio; its address is relative to the file that names it. */
public final class DesignChoice {
    private final Workshop workshop;
    private final Studio studio;
    private final Path from;
    private final Combo combo;
    private List<String> addresses = List.of();
    private List<String> shown = List.of();

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
        combo = new Combo(parent, SWT.READ_ONLY);
        combo.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        combo.setData("culm.path", "design");
        combo.addListener(SWT.Selection, e -> {
            if (combo.getSelectionIndex() >= 0 && combo.getSelectionIndex() < addresses.size()) {
                chosen.accept(addresses.get(combo.getSelectionIndex()));
            }
        });
    }

    /** Shows the designs that are there and the one that is chosen. @param address null or empty for none */
    public void show(String address) {
        List<String> names = new ArrayList<>();
        List<String> now = new ArrayList<>();
        for (StudioEntry entry : index().of(FileKind.DESIGN)) {
            names.add(entry.title());
            now.add(address(from, entry.file()));
        }
        String wanted = address == null ? "" : address;
        if (!wanted.isEmpty() && !now.contains(wanted)) {
            now.add(wanted);
            names.add(wanted);
        }
        if (!names.equals(shown) || combo.getItemCount() == 0) {
            combo.setItems(names.toArray(String[]::new));
            shown = names;
        }
        addresses = now;
        int at = now.indexOf(wanted);
        if (at < 0) {
            combo.deselectAll();
        } else {
            combo.select(at);
        }
    }

    /** What is in the studio: as the window knows it already where it is the same. */
    private StudioIndex index() {
        boolean same = workshop.studio().studio().map(s -> s.root().equals(studio.root())).orElse(false);
        return workshop.studio().index().filter(i -> same).orElseGet(studio::index);
    }

    /** {@return its control} */
    public Combo control() {
        return combo;
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
