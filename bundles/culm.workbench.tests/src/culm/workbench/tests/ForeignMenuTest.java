package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.workbench.internal.menus.MenuText;

/** A command that a plug-in puts into a menu of the window: it stands below Culm's own lines each time the menu is opened, and runs. */
class ForeignMenuTest extends WorkbenchTest {

    @ParameterizedTest
    @CsvSource({ "Design, DESIGN, Foreign After", "Help, HELP, Foreign Before" })
    void standsBelowTheLinesOfTheMenuAndRuns(String head, MenuText own, String line) throws Exception {
        List<String> first = ui(() -> opened(menu(head)));
        assertEquals(line, last(first), first.toString());
        assertEquals(own.commands().size() + 1, first.stream().filter(t -> !t.isEmpty()).count(), first.toString());
        for (int again = 0; again < 3; again++) {
            assertEquals(first, ui(() -> opened(menu(head))));
        }
        int before = ForeignCommand.RUN.get();
        ui(() -> {
            Menu menu = menu(head);
            menu.notifyListeners(SWT.Show, new Event());
            MenuItem item = Stream.of(menu.getItems()).filter(i -> words(i).equals(line)).findFirst().orElseThrow();
            assertTrue(item.isEnabled(), line);
            item.notifyListeners(SWT.Selection, new Event());
            menu.notifyListeners(SWT.Hide, new Event());
        });
        assertEquals(before + 1, ForeignCommand.RUN.get());
    }

    private Menu menu(String head) {
        return Stream.of(window().getShell().getMenuBar().getItems()).filter(i -> words(i).equals(head)).findFirst().orElseThrow().getMenu();
    }

    private static List<String> opened(Menu menu) {
        menu.notifyListeners(SWT.Show, new Event());
        List<String> lines = Stream.of(menu.getItems()).map(ForeignMenuTest::words).toList();
        menu.notifyListeners(SWT.Hide, new Event());
        return lines;
    }

    private static String last(List<String> lines) {
        return lines.get(lines.size() - 1);
    }

    private static String words(MenuItem item) {
        return item.getText().replace("&", "").split("\t")[0];
    }
}
