package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/**
 * Base of the classes that take pictures of every page and dialog, light and dark, small and large, to be looked at. They are no tests: their
 * names keep them out of the runs of tests; {@code releng/pictures} runs them.
 */
abstract class PictureTaker extends BenchTest {
    private static final Point SMALL = new Point(1280, 800);
    private static final Point LARGE = new Point(1900, 1150);
    private String prefix = "";

    @BeforeEach
    final void openTheStudio() throws Exception {
        openStudio();
    }

    @AfterEach
    final void lightAgain() throws Exception {
        command("culm.window.light");
    }

    /** Does something in the small window, light and dark. */
    final void small(Action pictures) throws Exception {
        in(List.of(SMALL), pictures);
    }

    /** Does something in the small and the large window, light and dark. */
    final void smallAndLarge(Action pictures) throws Exception {
        in(List.of(SMALL, LARGE), pictures);
    }

    private void in(List<Point> sizes, Action pictures) throws Exception {
        String scale = "2".equals(System.getenv("GDK_SCALE")) ? "200-" : "100-";
        Files.createDirectories(Path.of(System.getProperty("culm.screenshots")));
        for (Point size : sizes) {
            ui(() -> {
                display().setCursorLocation(size.x, size.y); // no tool tip comes up in a picture
                window().getShell().setLocation(0, 0);
                window().getShell().setSize(size);
            });
            for (String theme : List.of("light", "dark")) {
                command("culm.window." + theme);
                prefix = scale + (size == SMALL ? "small-" : "large-") + theme + "-";
                pictures.run();
                ui(() -> page().closeAllEditors(false));
            }
        }
    }

    /** Takes a picture of the screen, by another program: the toolkit's own is no finer at 200 % than at 100 %. */
    final void keep(String name) throws Exception {
        atRest();
        String file = Path.of(System.getProperty("culm.screenshots"), prefix + name + ".png").toString();
        assertEquals(0, new ProcessBuilder("import", "-window", "root", file).inheritIO().start().waitFor());
    }

    /** Takes a picture of a dialog that a command opens, and closes it. */
    final void keepDialog(String command, String title, String name) throws Exception {
        Shell dialog = dialog(command, title);
        keep(name);
        close(dialog);
    }

    final void close(Shell dialog) throws Exception {
        ui(dialog::close);
        settle();
        // On a display with no manager of windows the toolkit leaves, at 200 %, what it uncovers as it was, for good; another size paints all of it anew.
        Point size = ui(() -> window().getShell().getSize());
        ui(() -> window().getShell().setSize(size.x, size.y + 1));
        atRest();
        ui(() -> window().getShell().setSize(size));
        atRest();
    }

    /** Chooses an item of a list that opens. */
    final void choose(Shell dialog, int combo, int item) throws Exception {
        ui(() -> {
            Combo chosen = find(dialog, Combo.class).get(combo);
            chosen.select(item);
            chosen.notifyListeners(org.eclipse.swt.SWT.Selection, new Event());
        });
    }
}
