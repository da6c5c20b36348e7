package culm.workbench.internal.menus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.menus.IWorkbenchContribution;
import org.eclipse.ui.services.IServiceLocator;

/** What stands in a menu of the window: made when the menu is first opened, since all of them together would hold up the window itself. */
public final class LateMenu extends ContributionItem implements IExecutableExtension, IWorkbenchContribution {
    private IServiceLocator site;
    private MenuText kind;
    private List<IContributionItem> lines = List.of();
    private final List<MenuItem> shown = new ArrayList<>();
    private final Listener whenShown = e -> show((Menu) e.widget);
    private Optional<Menu> followed = Optional.empty();

    /** The name of the menu stands behind the class in plugin.xml. */
    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object name) {
        kind = MenuText.valueOf((String) name);
    }

    @Override
    public void initialize(IServiceLocator locator) {
        site = locator;
    }

    /** Follows the menu; the platform fills it again and again. */
    @Override
    public void fill(Menu menu, int index) {
        if (followed.filter(m -> m == menu).isEmpty()) {
            followed = Optional.of(menu);
            menu.addListener(SWT.Show, whenShown);
        }
    }

    /** Anew each time: the platform takes away what it has not put there itself. */
    private void show(Menu menu) {
        if (lines.isEmpty()) {
            lines = kind.items(site);
        }
        takeAway();
        for (IContributionItem line : lines) {
            line.fill(menu, shown.size());
            shown.add(menu.getItem(shown.size()));
        }
    }

    private void takeAway() {
        shown.stream().filter(item -> !item.isDisposed()).forEach(MenuItem::dispose);
        shown.clear();
    }

    @Override
    public void dispose() {
        followed.filter(menu -> !menu.isDisposed()).ifPresent(menu -> menu.removeListener(SWT.Show, whenShown));
        followed = Optional.empty();
        takeAway();
        lines.forEach(IContributionItem::dispose);
        lines = List.of();
        super.dispose();
    }
}
