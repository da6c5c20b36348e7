package culm.workbench.internal.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.log.GroupBy;
import culm.bench.log.GroupStats;
import culm.bench.log.LogCharts;
import culm.bench.log.ShareChart;
import culm.bench.log.Tied;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.bench.page.DrawingCanvas;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.ScrollPage;

/** Whose blanks leak, which batch makes keepers, how the turns run: charts of the blanks that pass the filter. */
final class ChartsPage extends Composite {
    private static final double HIGH = 260;
    private final List<LinkText> links = new ArrayList<>();
    private final ScrollPage page;
    private final DrawingCanvas leaks;
    private final DrawingCanvas keepers;
    private final DrawingCanvas turns;
    private final DrawingCanvas expected;
    private GroupBy by = GroupBy.PERSON;
    private List<Tied> log = List.of();
    private LogShown shown = LogShown.NOTHING;

    ChartsPage(Composite parent, Look look) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 4;
        layout.marginHeight = 0;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        Composite bar = new Composite(this, SWT.NONE);
        GridLayout row = new GridLayout(GroupBy.values().length, false);
        row.marginWidth = 6;
        row.marginHeight = 0;
        bar.setLayout(row);
        look.dress(bar, Role.PAPER, Role.INK);
        for (GroupBy each : GroupBy.values()) {
            LinkText link = new LinkText(bar, look, each.words(), Size.BODY);
            link.onClick(() -> by(each));
            links.add(link);
        }
        page = new ScrollPage(this, look);
        page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        leaks = new DrawingCanvas(page.content(), look);
        keepers = new DrawingCanvas(page.content(), look);
        turns = new DrawingCanvas(page.content(), look);
        expected = new DrawingCanvas(page.content(), look);
        by(by);
    }

    /** Puts blanks together by something else. */
    void by(GroupBy now) {
        by = now;
        for (int i = 0; i < links.size(); i++) {
            links.get(i).chosen(GroupBy.values()[i] == now);
        }
        links.get(0).getParent().layout();
        show(log, shown);
    }

    void show(List<Tied> now, LogShown all) {
        log = now;
        shown = all;
        List<GroupStats> groups = GroupStats.by(by, log);
        leaks.show((width, measure) -> groups.isEmpty() ? Optional.empty() : Optional.of(ShareChart.draw("Leaked, by " + by.words(), groups, GroupStats::leaks, width, measure)));
        keepers.show((width, measure) -> groups.isEmpty() ? Optional.empty() : Optional.of(ShareChart.draw("Keepers, by " + by.words(), groups, GroupStats::keepers, width, measure)));
        turns.show((width, measure) -> groups.isEmpty() ? Optional.empty() : Optional.of(LogCharts.turns(log, by, all.limits(), width, HIGH, measure)));
        expected.show((width, measure) -> all.compared().isEmpty() ? Optional.empty() : Optional.of(LogCharts.expected(all.compared(), Math.min(width, 420), 320, measure)));
        page.fit();
    }

    /** {@return the drawings, top to bottom} */
    List<DrawingCanvas> drawings() {
        return List.of(leaks, keepers, turns, expected);
    }
}
