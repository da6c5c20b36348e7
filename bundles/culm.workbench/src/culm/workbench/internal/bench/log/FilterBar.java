package culm.workbench.internal.bench.log;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.bench.log.GroupBy;
import culm.bench.log.LogFilter;
import culm.bench.log.Tied;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;

/** Which blanks are shown: by person, cane batch, staple batch and shape. */
final class FilterBar extends Composite {
    private static final List<GroupBy> BY = List.of(GroupBy.PERSON, GroupBy.CANE, GroupBy.STAPLES, GroupBy.SHAPE);
    private final Supplier<List<Tied>> log;
    private final Runnable changed;
    private final Map<GroupBy, String> wanted = new EnumMap<>(GroupBy.class);
    private final Map<GroupBy, LinkText> links = new EnumMap<>(GroupBy.class);

    FilterBar(Composite parent, Look look, Supplier<List<Tied>> log, Runnable changed) {
        super(parent, SWT.NONE);
        this.log = log;
        this.changed = changed;
        GridLayout layout = new GridLayout(2, true);
        layout.marginWidth = 4;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        for (GroupBy by : BY) {
            LinkText link = new LinkText(this, look, words(by), Size.BODY);
            link.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
            link.setData("culm.path", "filter." + by.name());
            link.onClick(() -> choose(by, link));
            links.put(by, link);
        }
    }

    private String words(GroupBy by) {
        return by.words() + ": " + wanted.getOrDefault(by, "all") + " ▾";
    }

    private void choose(GroupBy by, LinkText link) {
        Menu menu = new Menu(link);
        item(menu, by, "");
        TreeSet<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        log.get().forEach(t -> names.add(by.of(t)));
        names.remove("");
        names.forEach(name -> item(menu, by, name));
        menu.setLocation(link.toDisplay(0, link.getSize().y));
        menu.setVisible(true);
    }

    private void item(Menu menu, GroupBy by, String name) {
        MenuItem item = new MenuItem(menu, SWT.RADIO);
        item.setText(name.isEmpty() ? "all" : name.replace("&", "&&"));
        item.setSelection(name.equals(wanted.getOrDefault(by, "")));
        item.addListener(SWT.Selection, e -> {
            if (item.getSelection()) {
                only(by, name);
            }
        });
    }

    /** Shows only blanks of a group. @param name empty for all */
    void only(GroupBy by, String name) {
        if (name.isEmpty()) {
            wanted.remove(by);
        } else {
            wanted.put(by, name);
        }
        links.get(by).say(words(by));
        layout();
        changed.run();
    }

    /** Shows all blanks. */
    void all() {
        if (!wanted.isEmpty()) {
            wanted.clear();
            links.forEach((by, link) -> link.say(words(by)));
            layout();
        }
    }

    LogFilter filter() {
        LogFilter filter = LogFilter.ALL;
        for (Map.Entry<GroupBy, String> each : wanted.entrySet()) {
            filter = filter.with(each.getKey(), each.getValue());
        }
        return filter;
    }

    boolean some() {
        return !wanted.isEmpty();
    }
}
