package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Test;

import culm.figures.Palette;
import culm.figures.Rgb;
import culm.figures.Role;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.look.Tabs;

/** Light and dark. */
class ThemeTest extends StudioTest {

    @Test
    void theDrawingsFollowTheTheme() throws Exception {
        open("trial-12.reed");
        assertEquals(colour(Palette.LIGHT), corner());
        command("culm.window.dark");
        try {
            settle();
            assertEquals(colour(Palette.DARK), corner());
            assertEquals(colour(Palette.DARK), ui(() -> figure("Reed").getParent().getBackground().getRGB()));
        } finally {
            command("culm.window.light");
        }
        settle();
        assertEquals(colour(Palette.LIGHT), corner());
    }

    @Test
    void whereNothingIsOpenTheWordsCanBeReadAndTheButtonsStandInNoBox() throws Exception {
        ui(() -> page().closeAllEditors(false));
        try {
            for (String theme : List.of("dark", "light", "dark", "light")) {
                command("culm.window." + theme);
                settle();
                RGB paper = colour(theme.equals("dark") ? Palette.DARK : Palette.LIGHT);
                ui(() -> {
                    CTabFolder empty = find(window().getShell(), CTabFolder.class).stream().filter(f -> f.getItemCount() == 0).findFirst().orElseThrow();
                    assertEquals(paper, find(empty, ToolBar.class).get(0).getBackground().getRGB(), theme);
                    List<Label> words = find(empty, Label.class).stream().filter(l -> !l.getText().isEmpty()).toList();
                    assertTrue(words.size() > 3);
                    words.forEach(l -> {
                        assertEquals(paper, l.getBackground().getRGB(), theme);
                        assertTrue(contrast(l.getForeground().getRGB(), paper) >= 4.5, theme + ": " + l.getText() + " in " + l.getForeground());
                    });
                });
            }
        } finally {
            command("culm.window.light");
        }
    }

    @Test
    void theTabsAreThisProgramsInBothThemes() throws Exception {
        open("trial-12.reed");
        try {
            for (String theme : List.of("dark", "light")) {
                command("culm.window." + theme);
                settle();
                Palette palette = theme.equals("dark") ? Palette.DARK : Palette.LIGHT;
                ui(() -> {
                    List<CTabFolder> all = find(window().getShell(), CTabFolder.class);
                    assertTrue(all.size() >= 2);
                    for (CTabFolder f : all) {
                        assertTrue(f.getRenderer() instanceof Tabs, theme);
                        assertEquals(colour(palette, Role.STRIP), f.getBackground().getRGB(), theme);
                        assertEquals(colour(palette, Role.PAPER), f.getSelectionBackground().getRGB(), theme);
                        assertEquals(colour(palette, Role.INK), f.getSelectionForeground().getRGB(), theme);
                    }
                });
            }
        } finally {
            command("culm.window.light");
        }
    }

    @Test
    void whatIsChosenInTheTreeHasTheColourOfTheThemeThatIsShown() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        Tree tree = ui(() -> find(window().getShell(), Tree.class).get(0));
        until("the studio is listed", () -> tree.getItemCount() > 0);
        ui(() -> tree.setSelection(tree.getItem(0)));
        Set<RGB> seen = new HashSet<>();
        try {
            for (String theme : List.of("dark", "light", "dark", "light")) {
                command("culm.window." + theme);
                atRest(); // the system tells its colours with the next frame
                RGB chosen = ui(() -> display().getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB());
                assertTrue(ui(() -> colours(tree)).contains(chosen), theme + ": " + chosen);
                seen.add(chosen);
            }
        } finally {
            command("culm.window.light");
        }
        assertEquals(2, seen.size(), "the themes have different ones, else this proves nothing");
    }

    private Set<RGB> colours(Control control) {
        ImageData data = picture(control);
        Set<RGB> all = new HashSet<>();
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                all.add(data.palette.getRGB(data.getPixel(x, y)));
            }
        }
        return all;
    }

    @Test
    void theStripBehindTheTabsComesWithTheFirstAndGoesWithTheLast() throws Exception {
        ui(() -> page().closeAllEditors(false));
        settle();
        assertEquals(colour(Palette.LIGHT), ui(() -> editors(0).getBackground().getRGB()));
        open("trial-12.reed");
        settle();
        assertEquals(colour(Palette.LIGHT, Role.STRIP), ui(() -> editors(1).getBackground().getRGB()));
        ui(() -> page().closeAllEditors(false));
        settle();
        assertEquals(colour(Palette.LIGHT), ui(() -> editors(0).getBackground().getRGB()));
    }

    /** The stack of the editors, by how many there are; the studio's has one tab as well, and lies before it. */
    private CTabFolder editors(int tabs) {
        return find(window().getShell(), CTabFolder.class).stream().filter(f -> f.getItemCount() == tabs).reduce((a, b) -> b).orElseThrow();
    }

    /** As the guidelines for readable pages on the web define it. */
    private static double contrast(RGB a, RGB b) {
        double high = Math.max(light(a), light(b));
        double low = Math.min(light(a), light(b));
        return (high + 0.05) / (low + 0.05);
    }

    private static double light(RGB c) {
        return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static RGB colour(Palette palette) {
        return colour(palette, Role.PAPER);
    }

    private static RGB colour(Palette palette, Role role) {
        Rgb rgb = palette.of(role);
        return new RGB(rgb.red(), rgb.green(), rgb.blue());
    }

    /** The colour in the corner of the reed's canvas as it is painted. */
    private RGB corner() throws Exception {
        ImageData data = ui(() -> picture(figure("Reed")));
        return data.palette.getRGB(data.getPixel(1, 1));
    }
}
