package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.commands.Command;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;

/** Every command can be reached from the menu and by a key of its own. */
class CommandsTest extends WorkbenchTest {

    @Test
    void everyCommandIsInAMenuAndHasAKey() throws Exception {
        Set<String> inMenus = new HashSet<>();
        for (IConfigurationElement element : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.menus")) {
            if (element.getContributor().getName().equals("culm.workbench") && String.valueOf(element.getAttribute("locationURI")).startsWith("menu:")) {
                collect(element, inMenus);
            }
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

    private static void collect(IConfigurationElement element, Set<String> ids) {
        if (element.getName().equals("command")) {
            ids.add(element.getAttribute("commandId"));
        }
        for (IConfigurationElement child : element.getChildren()) {
            collect(child, ids);
        }
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
