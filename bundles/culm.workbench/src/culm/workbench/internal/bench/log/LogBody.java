package culm.workbench.internal.bench.log;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.log.Tied;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.BenchHeader;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;

/** What stands in a log's editor: the blanks, and the pages beside them. */
final class LogBody {
    private static final int LIST = 368;
    private final BenchHeader header;
    private final FilterBar filter;
    private final LogRows rows = new LogRows();
    private final Grid grid;
    private final LinkText begin;
    private final Composite stack;
    private final BlankPage blank;
    private final WrongPage wrong;
    private final ChartsPage charts;
    private final WhoPage who;
    private final LearnPage learn;
    private LogEditor.Page page = LogEditor.Page.BLANK;
    private boolean selecting;

    LogBody(Composite all, LogEditor editor, LogEdits edits, java.util.function.Consumer<Composite> guards) {
        Workshop workshop = editor.session().workshop();
        Look look = workshop.look();
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 6;
        layout.verticalSpacing = 2;
        all.setLayout(layout);
        look.dress(all, Role.PAPER, Role.INK);
        header = new BenchHeader(all, look, Stream.of(LogEditor.Page.values()).map(LogEditor.Page::words).toList(), i -> editor.showPage(LogEditor.Page.values()[i]));
        header.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        guards.accept(all);
        Composite left = new Composite(all, SWT.NONE);
        GridLayout column = new GridLayout();
        column.marginWidth = 8;
        column.marginHeight = 0;
        column.verticalSpacing = 2;
        left.setLayout(column);
        GridData narrow = new GridData(SWT.BEGINNING, SWT.FILL, false, true);
        narrow.widthHint = LIST + 34;
        left.setLayoutData(narrow);
        look.dress(left, Role.PAPER, Role.INK);
        filter = new FilterBar(left, look, editor::log, editor::show);
        filter.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        grid = new Grid(left, look, rows);
        grid.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        grid.onMove(() -> {
            if (!selecting) {
                editor.rowChosen();
            }
        });
        begin = new LinkText(left, look, "+ new blank", Size.BODY);
        begin.setToolTipText("Ctrl+J; takes over from the last one what rarely changes");
        begin.onClick(editor::newBlank);
        stack = new Composite(all, SWT.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        look.dress(stack, Role.PAPER, Role.INK);
        blank = new BlankPage(stack, look, parent -> new LogForm(parent, editor.session(), edits), editor::newBlank);
        blank.on(() -> editor.showPage(LogEditor.Page.WRONG), editor::removeChosen);
        wrong = new WrongPage(stack, look, workshop.units());
        charts = new ChartsPage(stack, look);
        who = new WhoPage(stack, look, workshop.units());
        who.onChoose(editor::choose);
        learn = new LearnPage(stack, look, workshop.units(), new LearnUse(workshop, editor.getSite().getPage(), editor.session().file()), editor::refused);
        page(page);
    }

    /** Makes a row of the list the current one, as an answer and not as a choice. */
    void select(int row) {
        selecting = true;
        try {
            grid.choose(row);
        } finally {
            selecting = false;
        }
    }

    /** Shows a page. */
    void page(LogEditor.Page now) {
        page = now;
        ((StackLayout) stack.getLayout()).topControl = switch (now) {
            case BLANK -> blank;
            case WRONG -> wrong;
            case CHARTS -> charts;
            case WHO -> who;
            case LEARN -> learn;
        };
        stack.layout();
        header.chosen(now.ordinal());
    }

    /** Shows what comes of the log, on the page that can be seen. @param locked whether it may only be looked at */
    void show(Optional<Tied> chosen, List<Tied> passed, LogShown shown, boolean locked) {
        begin.setVisible(!locked);
        switch (page) {
            case BLANK -> blank.show(chosen, shown, locked);
            case WRONG -> wrong.show(chosen, shown);
            case CHARTS -> charts.show(passed, shown);
            case WHO -> who.show(passed, shown);
            case LEARN -> learn.show(shown);
        }
    }

    LogEditor.Page page() {
        return page;
    }

    BenchHeader header() {
        return header;
    }

    FilterBar filter() {
        return filter;
    }

    LogRows rows() {
        return rows;
    }

    Grid grid() {
        return grid;
    }

    BlankPage blank() {
        return blank;
    }

    WrongPage wrong() {
        return wrong;
    }

    ChartsPage charts() {
        return charts;
    }

    WhoPage who() {
        return who;
    }

    LearnPage learn() {
        return learn;
    }
}
