package culm.workbench.internal.menus;

import java.util.Optional;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.eclipse.ui.services.IServiceLocator;

import culm.workbench.internal.look.Icons;

/**
 * A line of a menu.
 *
 * @param command what it runs; empty for a line between groups
 * @param icon the name of its icon
 * @param words what it says; as the command says, when there are none
 */
record MenuLine(Optional<String> command, Optional<String> icon, Optional<String> words) {
    private static final String ONE_OF_SEVERAL = "culm.window.";

    /** Reads a line as {@link MenuText} writes it. */
    static MenuLine of(String line) {
        if (line.equals("-")) {
            return new MenuLine(Optional.empty(), Optional.empty(), Optional.empty());
        }
        String[] both = line.split(" : ");
        String[] parts = both[0].split(" ");
        return new MenuLine(Optional.of(parts[0]), Optional.of(parts).filter(p -> p.length > 1).map(p -> p[1]), Optional.of(both).filter(b -> b.length > 1).map(b -> b[1]));
    }

    /** {@return it, for a menu} */
    IContributionItem item(IServiceLocator site) {
        return command.<IContributionItem>map(id -> {
            int style = id.startsWith(ONE_OF_SEVERAL) ? CommandContributionItem.STYLE_RADIO : CommandContributionItem.STYLE_PUSH;
            CommandContributionItemParameter all = new CommandContributionItemParameter(site, null, id, style);
            all.icon = icon.map(Icons::descriptor).orElse(null);
            all.label = words.orElse(null);
            return new CommandContributionItem(all);
        }).orElseGet(Separator::new);
    }
}
