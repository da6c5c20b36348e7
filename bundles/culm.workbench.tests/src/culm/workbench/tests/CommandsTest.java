package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.commands.Command;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.menus.CommandContributionItem;
import org.junit.jupiter.api.Test;

/** Every command can be reached from the menu and by a key of its own. */
class CommandsTest extends WorkbenchTest {

    @Test
    void everyCommandIsInAMenuAndHasAKey() throws Exception {
        Set<String> inMenus = new HashSet<>();
        for (List<MenuItem> menu : ui(this::menus)) {
            inMenus.addAll(ui(() -> commands(menu)));
        }
        List<String> without = new ArrayList<>();
        ui(() -> {
            IBindingService keys = workbench().getService(IBindingService.class);
            for (Command command : workbench().getService(ICommandService.class).getDefinedCommands()) {
                if (command.getId().startsWith("culm.") && (keys.getActiveBindingsFor(command.getId()).length == 0 || !inMenus.contains(command.getId()))) {
                    without.add(command.getId());
                }
            }
        });
        assertEquals(List.of(), without);
        assertTrue(inMenus.size() > 30);
    }

    @Test
    void aMenuThatIsOpenedAgainShowsTheSameLines() throws Exception {
        List<List<String>> once = ui(() -> menus().stream().map(CommandsTest::words).toList());
        assertEquals(7, once.size());
        assertEquals(once, ui(() -> menus().stream().map(CommandsTest::words).toList()));
        assertTrue(once.get(0).get(0).startsWith("New Design"), once.get(0).toString());
        assertTrue(once.get(0).get(once.get(0).size() - 1).startsWith("Exit"), once.get(0).toString());
    }

    /** The lines of each menu of the window, as if it was opened. */
    private List<List<MenuItem>> menus() {
        List<List<MenuItem>> all = new ArrayList<>();
        for (MenuItem head : window().getShell().getMenuBar().getItems()) {
            head.getMenu().notifyListeners(SWT.Show, new Event());
            all.add(List.of(head.getMenu().getItems()));
            head.getMenu().notifyListeners(SWT.Hide, new Event());
        }
        return all;
    }

    private static List<String> words(List<MenuItem> menu) {
        return menu.stream().map(MenuItem::getText).toList();
    }

    private static Set<String> commands(List<MenuItem> menu) {
        return menu.stream().map(MenuItem::getData).filter(CommandContributionItem.class::isInstance).map(d -> ((CommandContributionItem) d).getCommand().getId()).collect(Collectors.toSet());
    }

    @Test
    void undoAndRedoAreAlwaysEnabledSinceADisabledKeyBringsUpAMessage() throws Exception {
        ui(() -> {
            page().closeAllEditors(false);
            for (String id : List.of("org.eclipse.ui.edit.undo", "org.eclipse.ui.edit.redo")) {
                assertTrue(workbench().getService(ICommandService.class).getCommand(id).isEnabled(), id);
            }
        });
    }

    @Test
    void noTwoCommandsShareAKey() throws Exception {
        Map<String, String> taken = new HashMap<>();
        ui(() -> {
            for (Binding binding : workbench().getService(IBindingService.class).getBindings()) {
                if ("culm.keys".equals(binding.getSchemeId()) && binding.getParameterizedCommand() != null) {
                    String other = taken.put(binding.getTriggerSequence().toString(), binding.getParameterizedCommand().getId());
                    assertEquals(null, other, binding.getTriggerSequence() + " is taken twice");
                }
            }
        });
        assertTrue(taken.size() >= 29);
    }
}
